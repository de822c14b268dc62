package fifthform.monitor.notebook;

import fifthform.monitor.json.JsonLine;
import fifthform.monitor.looks.LookText;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.NotebookText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The notebook without a window: a table for people, a line each for scripts. */
public final class NotebookLines {
    /** Longer words are told whole on the screen and in JSON; a table must stay one. */
    private static final int WIDEST = 40;

    private static final int PLACES = 3;

    private NotebookLines() {}

    /** A head and a line for each row, in columns. */
    public static List<String> table(List<BatchRow> rows, Units units) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of(
                NotebookText.FIGURE_BATCH.say(),
                NotebookText.COLUMN_CHOCOLATE.say(),
                NotebookText.COLUMN_BOWL.say(),
                NotebookText.COLUMN_AMOUNT.say(),
                NotebookText.COLUMN_LENGTH.say(),
                NotebookText.FIGURE_PEAK.say(),
                NotebookText.COLUMN_END.say(),
                // Over its column in the window it has two lines.
                NotebookText.COLUMN_LOOKS.say().replace('\n', ' ')));
        for (BatchRow row : rows)
            cells.add(List.of(
                    row.name(),
                    RowWords.chocolate(row),
                    RowWords.bowl(row),
                    RowWords.amount(row),
                    RowWords.minutes(row),
                    RowWords.peak(row, units),
                    RowWords.end(row),
                    RowWords.looks(row)));
        int columns = cells.get(0).size();
        int[] widths = new int[columns];
        for (List<String> line : cells)
            for (int i = 0; i < columns; i++)
                widths[i] = Math.max(widths[i], cut(line.get(i), i == 0).length());
        return cells.stream().map(line -> line(line, widths)).toList();
    }

    private static String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            boolean last = i == cells.size() - 1;
            String cell = last ? LookWords.plain(cells.get(i)) : cut(cells.get(i), i == 0);
            line.append(cell);
            if (!last) line.append(" ".repeat(widths[i] - cell.length() + 2));
        }
        return line.toString().stripTrailing();
    }

    /** What people wrote must not command the terminal; a name stays whole, since it is typed again. */
    private static String cut(String cell, boolean whole) {
        String plain = LookWords.plain(cell);
        return whole || plain.length() <= WIDEST ? plain : plain.substring(0, WIDEST - 1) + "…";
    }

    /**
     * A row as an answer to scripts; temperatures in °C.
     *
     * @param all where batches that were made from its bars are looked for
     */
    public static String json(BatchRow row, Collection<BatchRow> all) {
        Figures figures = row.figures();
        JsonLine line = new JsonLine()
                .text("session", row.name())
                .text("file", row.file().toString())
                .text("start", row.start().toString())
                .text("kind", row.kind().word())
                .text("chocolate", row.chocolateId())
                .text("chocolate_name", row.chocolate())
                .text("bowl", row.bowl())
                .number("amount_g", row.amountGrams())
                .text("begins", row.beginning().word())
                .text("condition", row.condition().word());
        row.beginning().again().ifPresent(from -> line.text("again", from));
        List<String> made = Links.madeFrom(row, all);
        if (!made.isEmpty()) line.texts("again_in", made);
        row.holding()
                .ifPresent(plan -> line.number("hold_min", plan.time().toMillis() / 60_000.0, PLACES)
                        .text("warm_by", plan.warmth().word()));
        if (!row.trouble().isEmpty()) line.text("trouble", row.trouble());
        if (row.counts()) {
            line.number("minutes", row.length().toMillis() / 60_000.0, PLACES)
                    .number("lowest_cool_c", figures.lowestCelsius())
                    .number("peak_c", figures.peakCelsius())
                    .number("over_range_s", figures.overRange().toMillis() / 1000.0, PLACES)
                    .text("verdict", figures.verdict().word());
            figures.crystals().ifPresent(word -> line.text("crystals", word));
            line.raw("seed_lost", Boolean.toString(figures.seedLost()));
        }
        return line.text("end", row.end().word())
                .objects(
                        "looks",
                        row.looks().stream()
                                .map(look -> LookText.line(row.name(), look)
                                        .text("sign", look.look().sign().word()))
                                .toList())
                .end();
    }
}
