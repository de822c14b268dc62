package fifthform.monitor.notebook;

import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;

/** By what rows are put in order, smallest first; where two are alike, the newer one first. */
public enum RowOrder {
    WHEN(Comparator.comparing(BatchRow::start)),
    CHOCOLATE(Comparator.comparing(row -> RowWords.chocolate(row).toLowerCase(Locale.ROOT))),
    BOWL(Comparator.comparing(row -> row.bowl().toLowerCase(Locale.ROOT))),
    AMOUNT(Comparator.comparingDouble(row -> known(row.amountGrams()))),
    LENGTH(Comparator.comparing(BatchRow::length)),
    PEAK(Comparator.comparingDouble(row -> known(row.figures().peakCelsius()))),
    /** Worst first. */
    END(Comparator.comparing(BatchRow::end)),
    LOOKS(Comparator.comparing(row -> row.looks().size()));

    private final Comparator<BatchRow> first;

    RowOrder(Comparator<BatchRow> first) {
        this.first = first;
    }

    /** Rows by this. */
    public Comparator<BatchRow> comparator() {
        return first.thenComparing(Notebook.NEWEST_FIRST);
    }

    /** The word in commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What nobody said stands first, where it can be seen to be missing. */
    private static double known(OptionalDouble value) {
        return value.orElse(Double.NEGATIVE_INFINITY);
    }

    @Override
    public String toString() {
        return word();
    }
}
