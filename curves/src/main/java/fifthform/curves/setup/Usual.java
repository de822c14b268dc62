package fifthform.curves.setup;

import fifthform.curves.check.Require;

/**
 * A figure as earlier batches showed it: how often, its mean and how it scattered (Welford's running sums: Technometrics
 * 4 (1962) 419, from memory).
 *
 * @param batches how many batches showed it, 0 to 1e6
 * @param mean their mean; of no meaning without a batch
 * @param squares sum of the squared deviations from the mean
 */
public record Usual(int batches, double mean, double squares) {
    /** Nothing seen yet. */
    public static final Usual NEVER = new Usual(0, 0, 0);

    public Usual {
        Require.within(batches, 0, 1e6, "batches");
        Require.finite(mean, "mean");
        Require.within(squares, 0, 1e9, "squares");
    }

    /** With one batch more. */
    public Usual and(double figure) {
        int more = batches + 1;
        double away = figure - mean;
        double moved = mean + away / more;
        return new Usual(more, moved, squares + away * (figure - moved));
    }
}
