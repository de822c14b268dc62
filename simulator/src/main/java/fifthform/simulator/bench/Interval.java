package fifthform.simulator.bench;

import fifthform.curves.check.Require;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * An interval that holds the true value at a stated level of confidence.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}
 */
public record Interval(double low, double high) {
    /** The level of confidence of all intervals here. */
    public static final double LEVEL = 0.95;

    public Interval {
        Require.finite(low, "low");
        Require.within(high, low, Double.MAX_VALUE, "high");
    }

    /**
     * Of a proportion. Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209, without
     * correction for continuity; computed by Commons Math.
     *
     * @param hits 0 to {@code of}
     * @param of at least 1
     */
    public static Interval ofProportion(long hits, long of) {
        Require.within(of, 1, Integer.MAX_VALUE, "of");
        Require.within(hits, 0, of, "hits");
        // At the ends one limit is the end itself; rounding would put it a hair off.
        if (hits == 0) return new Interval(0, wilson(hits, of).getUpperBound());
        if (hits == of) return new Interval(wilson(hits, of).getLowerBound(), 1);
        return new Interval(wilson(hits, of).getLowerBound(), wilson(hits, of).getUpperBound());
    }

    private static ConfidenceInterval wilson(long hits, long of) {
        return new WilsonScoreInterval().createInterval((int) of, (int) hits, LEVEL);
    }

    /**
     * Of a mean, by Student's t. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2.
     *
     * @param count at least 2
     * @param mean of the sample
     * @param deviation standard deviation of the sample, not negative
     */
    public static Interval ofMean(long count, double mean, double deviation) {
        Require.within(count, 2, Long.MAX_VALUE, "count");
        Require.within(deviation, 0, Double.MAX_VALUE, "deviation");
        TDistribution student = new TDistribution(null, count - 1.0); // null: nothing is ever drawn from it
        double half = student.inverseCumulativeProbability((1 + LEVEL) / 2) * deviation / Math.sqrt(count);
        return new Interval(mean - half, mean + half);
    }
}
