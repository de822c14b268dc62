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
    public LearnedCoast {
        Require.within(coastSeconds, 1, 600, "coastSeconds");
        Require.within(logSpread, 0, 2, "logSpread");
        Require.within(liftsSeen, 1, 1e9, "liftsSeen");
    }
}
