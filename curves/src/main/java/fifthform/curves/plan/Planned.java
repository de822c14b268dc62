package fifthform.curves.plan;

import java.util.Objects;

/**
 * One figure of a plan.
 *
 * @param key what it is; its unit with it
 * @param value the middle
 * @param low lower end of the band, nine times in ten; {@code value} where it is exact
 * @param high upper end of the band
 * @param formula how it follows, with the numbers put in
 * @param source where formula and constants come from
 */
public record Planned(PlanKey key, double value, double low, double high, String formula, String source) {
    public Planned {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(source, "source");
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(key + " must lie in its band, was " + low + ", " + value + ", " + high);
        }
    }

    /** With a band of ±1.645 standard deviations. */
    static Planned of(PlanKey key, double value, double deviation, String formula, String source) {
        double half = Band.NINE_IN_TEN * deviation;
        // Amounts and differences are never negative; temperatures may be.
        double least = key.unit() == PlanKey.Unit.CELSIUS ? Double.NEGATIVE_INFINITY : Math.min(0, value);
        return new Planned(key, value, Math.max(least, value - half), value + half, formula, source);
    }

    /** With a band of ±1.645 standard deviations of its logarithm. */
    static Planned ofLog(PlanKey key, double value, double logDeviation, String formula, String source) {
        double factor = StrictMath.exp(Band.NINE_IN_TEN * logDeviation);
        return new Planned(key, value, value / factor, value * factor, formula, source);
    }

    /** A choice of the plan: it has no band. */
    static Planned chosen(PlanKey key, double value, String formula, String source) {
        return new Planned(key, value, value, value, formula, source);
    }
}
