package fifthform.simulator.rivals;

/**
 * An exponential approach to a bath fitted to the last readings: {@code T = B − (B − T0) exp(−t/τ)}, the time constant out
 * of a few, level and slope by least squares; the fit's slope now, drawn on for a fixed time.
 *
 * @param leadSeconds for how long, s
 * @param windowSeconds through so much of the curve, s
 * @param recent readings
 * @param levelCelsius the fit now, °C
 * @param kelvinPerSecond its slope now, K/s
 */
record ExponentialRule(
        double leadSeconds, double windowSeconds, Recent recent, double levelCelsius, double kelvinPerSecond)
        implements Rule {
    private static final double[] TIME_CONSTANTS = {-60, -20, 20, 40, 80, 160, 320, 1000};
    private static final int FEWEST = 8;
    private static final double LONGEST_SECONDS = 121;
    private static final double STEP_SECONDS = 0.5;

    /** For each time constant {@code τ (1 − exp(t/τ))} at each half second t back. */
    private static final double[][] BACK = back();

    ExponentialRule(double leadSeconds, double windowSeconds) {
        this(leadSeconds, windowSeconds, Recent.of((int) Math.ceil(2 * windowSeconds) + 1), Double.NaN, 0);
    }

    @Override
    public ExponentialRule after(double atSeconds, double celsius) {
        Recent more = recent.with(atSeconds, celsius);
        int from = more.from(windowSeconds);
        if (more.count() - from < FEWEST) {
            return new ExponentialRule(leadSeconds, windowSeconds, more, Double.NaN, 0);
        }
        double least = Double.POSITIVE_INFINITY;
        double level = Double.NaN;
        double slope = 0;
        for (double[] back : BACK) {
            double[] fit = fit(more, from, back);
            if (fit[2] < least) {
                least = fit[2];
                level = fit[0];
                slope = fit[1];
            }
        }
        return new ExponentialRule(leadSeconds, windowSeconds, more, level, slope);
    }

    private static double[][] back() {
        double[][] back = new double[TIME_CONSTANTS.length][(int) (LONGEST_SECONDS / STEP_SECONDS) + 1];
        for (int i = 0; i < back.length; i++) {
            for (int k = 0; k < back[i].length; k++) {
                back[i][k] = -TIME_CONSTANTS[i] * StrictMath.expm1(k * STEP_SECONDS / TIME_CONSTANTS[i]);
            }
        }
        return back;
    }

    /** Level and slope now, and what is left: {@code y = level + slope · τ (1 − exp(−t/τ))} with t ≤ 0. */
    private static double[] fit(Recent recent, int from, double[] back) {
        int n = recent.count() - from;
        double sumX = 0;
        double sumY = 0;
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = from; i < recent.count(); i++) {
            double x = back[(int) Math.round(-recent.ago(i) / STEP_SECONDS)];
            double y = recent.celsius(i) - recent.celsius(recent.count() - 1);
            sumX += x;
            sumY += y;
            sxx += x * x;
            sxy += x * y;
            syy += y * y;
        }
        double vxx = sxx - sumX * sumX / n;
        double vxy = sxy - sumX * sumY / n;
        double vyy = syy - sumY * sumY / n;
        double slope = vxx > 0 ? vxy / vxx : 0;
        double level = (sumY - slope * sumX) / n + recent.celsius(recent.count() - 1);
        return new double[] {level, slope, vyy - slope * vxy};
    }

    @Override
    public double turnCelsius() {
        return levelCelsius + leadSeconds * Math.max(0, kelvinPerSecond);
    }
}
