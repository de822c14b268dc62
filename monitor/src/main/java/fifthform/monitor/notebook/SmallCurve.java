package fifthform.monitor.notebook;

import java.util.OptionalDouble;

/**
 * Temperatures at even steps of time, to a hundredth of a degree, small enough to be kept of thousands of batches. Each is
 * the mean of its step; a step without a reading is a gap.
 */
public final class SmallCurve {
    /** Of a batch without readings. */
    public static final SmallCurve EMPTY = new SmallCurve(1, "", OptionalDouble.empty());

    private static final int GAP = 46_655;
    private static final int DIGITS = 3;
    private static final int BASE = 36;
    private static final double LOWEST_CELSIUS = -50;

    private final double stepSeconds;

    /** Three digits a point, as the index has them: taken apart only where it is drawn. */
    private final String digits;

    private final OptionalDouble troughSeconds;

    private SmallCurve(double stepSeconds, String digits, OptionalDouble troughSeconds) {
        this.stepSeconds = stepSeconds;
        this.digits = digits;
        this.troughSeconds = troughSeconds;
    }

    /**
     * A curve.
     *
     * @param stepSeconds from one point to the next, s
     * @param celsius the points, °C; NaN is a gap; what lies beyond −50 to 416 °C is drawn in
     * @param troughSeconds when the batch was coldest in its cool, s since the start
     */
    static SmallCurve of(double stepSeconds, double[] celsius, OptionalDouble troughSeconds) {
        StringBuilder text = new StringBuilder(DIGITS * celsius.length);
        for (double each : celsius) {
            long hundredths = Math.max(0, Math.min(GAP - 1, Math.round((each - LOWEST_CELSIUS) * 100)));
            String point = Long.toString(Double.isNaN(each) ? GAP : hundredths, BASE);
            text.append("0".repeat(DIGITS - point.length())).append(point);
        }
        return new SmallCurve(stepSeconds, text.toString(), troughSeconds);
    }

    public int points() {
        return digits.length() / DIGITS;
    }

    /** Middle of step {@code point}, s since the start. */
    public double seconds(int point) {
        return (point + 0.5) * stepSeconds;
    }

    /** Temperature at {@code point}, °C; NaN in a gap. */
    public double celsius(int point) {
        int hundredths = Integer.parseInt(digits, DIGITS * point, DIGITS * (point + 1), BASE);
        return hundredths == GAP ? Double.NaN : hundredths / 100.0 + LOWEST_CELSIUS;
    }

    double stepSeconds() {
        return stepSeconds;
    }

    /** When the batch was coldest in its cool, s since the start; empty where it was not cooled. */
    public OptionalDouble troughSeconds() {
        return troughSeconds;
    }

    /** The points as digits, three each. */
    String digits() {
        return digits;
    }

    /** The curve of such digits, which are taken as they are. */
    static SmallCurve read(double stepSeconds, String digits, OptionalDouble troughSeconds) {
        return new SmallCurve(stepSeconds, digits, troughSeconds);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SmallCurve curve
                && stepSeconds == curve.stepSeconds
                && troughSeconds.equals(curve.troughSeconds)
                && digits.equals(curve.digits);
    }

    @Override
    public int hashCode() {
        return digits.hashCode();
    }
}
