package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * One line by itself, before its neighbours are asked.
 *
 * @param bytes without the line end
 * @param skeleton the text with every number replaced: lines of one kind have equal skeletons
 * @param firstNumber the only number that a torn beginning can spoil
 * @param signals what the line says, if it needs no neighbour
 * @param junction the cold junction, where the line tells that and nothing else
 * @param columns bare numbers, whose meaning only following lines can tell
 */
record Line(
        int bytes,
        String skeleton,
        Optional<Written> firstNumber,
        List<Signal> signals,
        Optional<Field> junction,
        List<Field> columns) {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?");
    private static final Predicate<String> HAS_DIGIT = Pattern.compile("\\d").asPredicate();

    static Line of(int bytes, String text) {
        Line empty = saying(bytes, text, List.of());
        List<Field> fields = (text.startsWith("{") ? JsonFields.read(text) : FieldGrammar.read(text)).orElse(List.of());
        if (!fields.isEmpty() && fields.stream().allMatch(Field::isBare)) return empty.withColumns(fields);
        Line labelled = empty.withSignals(Temperatures.labelled(fields).orElse(List.of()));
        if (labelled.signals().isEmpty() && fields.size() == 1 && isJunction(fields.get(0)))
            return empty.withJunction(fields.get(0));
        boolean wordsOnly = labelled.signals().isEmpty() && !HAS_DIGIT.test(text);
        return wordsOnly ? empty.withSignals(FaultWords.read(text).map(List::of).orElse(List.of())) : labelled;
    }

    /** A line that needs no neighbour; without signals it is unreadable. */
    static Line saying(int bytes, String text, List<Signal> signals) {
        Optional<Written> first = NUMBER.matcher(text)
                .results()
                .findFirst()
                .map(MatchResult::group)
                .flatMap(Written::of);
        String skeleton = NUMBER.matcher(text).replaceAll("#").replaceAll("\\s+", " ");
        return new Line(bytes, skeleton, first, signals, Optional.empty(), List.of());
    }

    private static boolean isJunction(Field field) {
        return field.label().meaning() == Label.Meaning.JUNCTION
                && field.number().isPresent();
    }

    private Line withSignals(List<Signal> these) {
        return new Line(bytes, skeleton, firstNumber, these, junction, columns);
    }

    private Line withJunction(Field field) {
        return new Line(bytes, skeleton, firstNumber, signals, Optional.of(field), columns);
    }

    private Line withColumns(List<Field> fields) {
        return new Line(bytes, skeleton, firstNumber, signals, junction, fields);
    }

    boolean isUnreadable() {
        return signals.isEmpty() && junction.isEmpty() && columns.isEmpty();
    }

    /** Whether this line, which may have lost its front, is of the same kind as the next and close to it. */
    boolean continuedBy(Line next) {
        return skeleton.equals(next.skeleton)
                && firstNumber.isPresent()
                && next.firstNumber.isPresent()
                && firstNumber.get().continuedBy(next.firstNumber.get());
    }
}
