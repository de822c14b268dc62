package fifthform.probe.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The words of a line that name the columns of those that follow: {@code time,tc,cj}. Every word must be known, so that a
 * greeting with a comma in it names nothing.
 *
 * @param labels one a column, at least two, at least one of them a tip
 * @param commas whether commas keep the columns apart
 */
record Header(List<Label> labels, WireText.Comma commas) {
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;\\t|]\\s*");
    private static final Pattern CELL = Pattern.compile("\"?[A-Za-z_][A-Za-z0-9_ .°%-]*\"?");

    static Optional<Header> read(String text) {
        String[] cells = BETWEEN.split(text, -1);
        if (cells.length < 2) return Optional.empty();
        List<Label> labels = new ArrayList<>();
        for (String cell : cells) {
            Label label = Label.of(cell.replace("°", " ").replace("\"", ""));
            boolean known = !label.words().isEmpty() && label.words().stream().allMatch(Vocabulary::isKnown);
            if (!CELL.matcher(cell).matches() || !known) return Optional.empty();
            labels.add(label);
        }
        boolean otherTip = labels.stream().anyMatch(label -> isTip(label) && !isBareT(label));
        if (otherTip) labels.replaceAll(label -> isBareT(label) ? Label.of("time") : label);
        boolean commas = text.indexOf(',') >= 0;
        return labels.stream().anyMatch(Header::isTip)
                ? Optional.of(new Header(
                        List.copyOf(labels), commas ? WireText.Comma.SEPARATES : WireText.Comma.MAY_BE_DECIMAL))
                : Optional.empty();
    }

    private static boolean isTip(Label label) {
        return label.meaning() == Label.Meaning.TIP;
    }

    /** Beside a column that says {@code temp} or {@code tc}, {@code t} is the time. */
    private static boolean isBareT(Label label) {
        return label.words().equals(List.of("t")) && label.index().isEmpty();
    }

    /** Bare columns with the header's words; empty if there are more or fewer of them. */
    Optional<Line> over(Line line) {
        if (line.fields().size() != labels.size()) return Optional.empty();
        List<Field> named = new ArrayList<>(labels.size());
        for (int i = 0; i < labels.size(); i++) named.add(line.fields().get(i).under(labels.get(i)));
        return Optional.of(Line.ofReadings(line.bytes(), named, Plan.of(named)));
    }
}
