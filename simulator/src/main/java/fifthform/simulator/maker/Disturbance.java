package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import java.time.Duration;

/**
 * Something that comes between at any moment alike, and lasts a while.
 *
 * @param everyMinutes mean time from the end of one to the next, above 0; infinite where it never comes
 * @param medianSeconds half of them are shorter
 * @param spread standard deviation of the natural logarithm of their length, 0 to 1.5
 */
record Disturbance(double everyMinutes, double medianSeconds, double spread) {
    static final Disturbance NEVER = new Disturbance(Double.POSITIVE_INFINITY, 1, 0);

    private static final double LONGEST_SECONDS = 600;

    Disturbance {
        if (!(everyMinutes > 0))
            throw new IllegalArgumentException("everyMinutes must be above 0, was " + everyMinutes);
        Require.within(medianSeconds, 0.5, LONGEST_SECONDS, "medianSeconds");
        Require.within(spread, 0, 1.5, "spread");
    }

    boolean comes() {
        return everyMinutes < Double.POSITIVE_INFINITY;
    }

    Duration pause(Luck luck) {
        return Duration.ofMillis(Math.round(60_000 * luck.exponential(everyMinutes)));
    }

    Duration lasting(Luck luck) {
        double seconds = medianSeconds * StrictMath.exp(spread * luck.normal());
        return Duration.ofMillis(Math.round(1000 * Math.min(LONGEST_SECONDS, seconds)));
    }
}
