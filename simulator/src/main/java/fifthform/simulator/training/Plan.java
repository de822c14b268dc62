package fifthform.simulator.training;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * How a network is trained. Together with the sessions and a seed it decides every bit of the weights.
 *
 * @param shape sizes of the network
 * @param passes through all sessions
 * @param batch sessions between two steps of the weights
 * @param pace most that a weight goes in a step, about
 * @param shrink share of every weight that goes with each step, per unit of pace
 * @param placeShare how much knowing the place counts, by one for the turning points
 * @param bulkShare how much knowing the bulk counts
 */
record Plan(Shape shape, int passes, int batch, double pace, double shrink, double placeShare, double bulkShare) {
    /** Longest slope that is followed as it is; a longer one is cut to this. Our own choice. */
    static final double LONGEST_SLOPE = 1;

    /** Steps of the weights until the pace is full. Our own choice. */
    private static final int RISE = 100;

    Plan {
        Objects.requireNonNull(shape, "shape");
        Require.within(passes, 1, 100_000, "passes");
        Require.within(batch, 1, 100_000, "batch");
        Require.within(pace, 1e-9, 1, "pace");
        Require.within(shrink, 0, 10, "shrink");
        Require.within(placeShare, 0, 100, "placeShare");
        Require.within(bulkShare, 0, 100, "bulkShare");
    }

    Pace paceOver(int sessions) {
        int steps = passes * ((sessions + batch - 1) / batch);
        return new Pace(pace, Math.min(RISE, steps / 10 + 1), steps);
    }
}
