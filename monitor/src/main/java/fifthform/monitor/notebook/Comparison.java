package fifthform.monitor.notebook;

import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.NotebookText;
import fifthform.monitor.texts.UnitText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Up to three batches laid over each other where each was coldest, with their figures side by side.
 *
 * @param batches the batches, in the order in which they were chosen
 * @param figures a line a figure: its name, then the value of each batch
 */
public record Comparison(List<Laid> batches, List<List<String>> figures) {
    /** More lines than this can no longer be told apart without colour. */
    public static final int MOST = 3;

    public Comparison {
        batches = List.copyOf(batches);
        figures = List.copyOf(figures);
    }

    /**
     * One batch on the common scale of time.
     *
     * @param row the batch
     * @param curve its temperatures
     * @param zeroSeconds where its curve has the common zero, s since its start
     */
    public record Laid(BatchRow row, SmallCurve curve, double zeroSeconds) {
        /** Time of a point, s from the common zero. */
        public double seconds(int point) {
            return curve.seconds(point) - zeroSeconds;
        }

        /** Whether it was cooled, so that its coldest moment is the zero; else its beginning is. */
        public boolean isMatched() {
            return curve.troughSeconds().isPresent();
        }
    }

    /** The comparison of these batches with these curves. */
    static Comparison of(List<BatchRow> rows, Function<BatchRow, SmallCurve> curves, Units units) {
        List<Laid> laid = new ArrayList<>();
        for (BatchRow row : rows) {
            SmallCurve curve = curves.apply(row);
            laid.add(new Laid(row, curve, curve.troughSeconds().orElse(0)));
        }
        List<List<String>> figures = new ArrayList<>();
        add(figures, NotebookText.FIGURE_CHOCOLATE, rows, RowWords::chocolate);
        add(figures, NotebookText.FIGURE_BOWL, rows, RowWords::bowl);
        add(figures, NotebookText.FIGURE_AMOUNT, rows, RowWords::amount);
        add(figures, NotebookText.FIGURE_LENGTH, rows, row -> NotebookText.MINUTES.say(RowWords.minutes(row)));
        add(
                figures,
                NotebookText.FIGURE_LOWEST,
                rows,
                row -> reached(row.figures().lowestCelsius(), units));
        add(
                figures,
                NotebookText.FIGURE_PEAK,
                rows,
                row -> reached(row.figures().peakCelsius(), units));
        add(figures, NotebookText.FIGURE_RANGE, rows, row -> range(row, units));
        add(figures, NotebookText.FIGURE_OVER, rows, Comparison::over);
        add(figures, NotebookText.FIGURE_END, rows, RowWords::end);
        add(figures, NotebookText.FIGURE_LOOKS, rows, RowWords::looks);
        return new Comparison(laid, figures);
    }

    private static void add(
            List<List<String>> figures, NotebookText name, List<BatchRow> rows, Function<BatchRow, String> value) {
        List<String> line = new ArrayList<>(List.of(name.say()));
        rows.forEach(row -> line.add(value.apply(row)));
        figures.add(line);
    }

    private static String reached(OptionalDouble celsius, Units units) {
        return celsius.isPresent() ? units.withUnit(celsius.getAsDouble()) : NotebookText.NOT_REACHED.say();
    }

    static String range(BatchRow row, Units units) {
        if (!row.targets().isKnown()) return NotebookText.NOT_SAID.say();
        return NotebookText.FROM_TO.say(
                units.oneDecimal(row.targets().workLowCelsius()),
                units.withUnit(row.targets().workHighCelsius()));
    }

    static String over(BatchRow row) {
        long seconds = row.figures().overRange().toSeconds();
        return seconds < 120 ? UnitText.SECONDS.say(seconds) : UnitText.MINUTES.say(Math.round(seconds / 60.0));
    }
}
