package fifthform.curves.setup;

import fifthform.curves.check.Require;

/**
 * What earlier batches taught about a bowl: how far it coasts after a lift for each unit of rate.
 *
 * @param coastSeconds kelvin of coast for each kelvin per second of rate at the lift, s; 1 to 600
 * @param logSpread standard deviation of the natural logarithm of {@code coastSeconds}; 0 to 2
 * @param liftsSeen number of lifts behind it, at least 1
 */
public record LearnedCoast(double coastSeconds, double logSpread, int liftsSeen) {
    private static final double SHORTEST_SECONDS = 1;
    private static final double LONGEST_SECONDS = 600;

    public LearnedCoast {
        Require.within(coastSeconds, SHORTEST_SECONDS, LONGEST_SECONDS, "coastSeconds");
        Require.within(logSpread, 0, 2, "logSpread");
        Require.within(liftsSeen, 1, 1e9, "liftsSeen");
    }

    /** The same, so many times as long as far as a coast can be, as well known as before. */
    public LearnedCoast times(double factor) {
        double seconds = Math.max(SHORTEST_SECONDS, Math.min(LONGEST_SECONDS, factor * coastSeconds));
        return new LearnedCoast(seconds, logSpread, liftsSeen);
    }
}
