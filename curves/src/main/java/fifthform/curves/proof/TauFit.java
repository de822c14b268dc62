package fifthform.curves.proof;

import java.util.Optional;

/**
 * The time constant of a cup from the curve of melted chocolate in it: {@code ln(T − Tb)} against time is a line as long as
 * nothing crystallises. Source: the project's crystal model, section 10.
 *
 * @param tauMinutes time constant, min
 * @param axisExcess the line drawn back to the dip, over what the sample had above the bath there; see {@link CupTraits}
 * @param scatterKelvin how far the readings lie off the line, K at 26 °C
 * @param readings how many the line was drawn through
 */
public record TauFit(double tauMinutes, double axisExcess, double scatterKelvin, int readings) {
    static final double FROM_CELSIUS = 30;
    static final double TO_CELSIUS = 22;
    private static final double LEFT_OUT_SECONDS = 30;
    /**
     * How much later than the dip itself a fall shows, the probe's lag taken off, s. Chosen on 30 simulated cups: with it
     * our rings bend within 0.15 K of them in the middle, without it 0.4 K too cold.
     */
    private static final double SEEN_LATE_SECONDS = 7;

    /** Fits the part from 30 to 22 °C; empty where it holds fewer than nine readings. */
    public static Optional<TauFit> of(CoolingCurve curve, Course course, double bathCelsius) {
        int from = curve.indexAt(course.dipSeconds() + LEFT_OUT_SECONDS);
        while (from < curve.size() && curve.celsius(from) > FROM_CELSIUS) from++;
        int to = from;
        while (to < curve.size() && curve.celsius(to) >= TO_CELSIUS) to++;
        int n = to - from;
        if (n < LocalFit.FEWEST) return Optional.empty();
        double t = 0;
        double y = 0;
        for (int i = from; i < to; i++) {
            t += minutes(curve, i) / n;
            y += height(curve, i, bathCelsius) / n;
        }
        double tt = 0;
        double ty = 0;
        double yy = 0;
        for (int i = from; i < to; i++) {
            double dt = minutes(curve, i) - t;
            double dy = height(curve, i, bathCelsius) - y;
            tt += dt * dt;
            ty += dt * dy;
            yy += dy * dy;
        }
        if (!(ty < 0)) return Optional.empty();
        double squares = Math.max(0, yy - ty * ty / tt);
        double scatter = Math.sqrt(squares / Math.max(1, n - 2)) * (26 - bathCelsius);
        double atDip = y + ty / tt * (course.dipSeconds() / 60 - t);
        double drawnBack = StrictMath.exp(atDip) / Math.max(1, course.startCelsius() - bathCelsius);
        double excess = drawnBack * StrictMath.exp(-SEEN_LATE_SECONDS / 60 * ty / tt);
        return Optional.of(new TauFit(-tt / ty, excess, scatter, n));
    }

    /** The cup as the reference tube takes it; empty where no thin metal cup cools like that. */
    public Optional<CupTraits> cup() {
        boolean usable = tauMinutes >= CupTraits.SHORTEST_MINUTES && tauMinutes <= CupTraits.LONGEST_MINUTES;
        double excess = Math.max(1, Math.min(CupTraits.MOST_EXCESS, axisExcess));
        return usable ? Optional.of(new CupTraits(tauMinutes, excess)) : Optional.empty();
    }

    private static double minutes(CoolingCurve curve, int index) {
        return curve.seconds(index) / 60;
    }

    private static double height(CoolingCurve curve, int index, double bathCelsius) {
        return StrictMath.log(Math.max(0.1, curve.celsius(index) - bathCelsius));
    }
}
