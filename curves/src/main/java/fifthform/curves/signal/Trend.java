package fifthform.curves.signal;

import fifthform.curves.check.Require;

/**
 * Level and slope of a noisy temperature, followed reading by reading: a Kalman filter whose slope wanders as a random
 * walk (discretised continuous white-noise acceleration).
 *
 * <p>Source of the equations: the local linear trend model as in Harvey, <i>Forecasting, Structural Time Series Models
 * and the Kalman Filter</i>, 1989, and Bar-Shalom, Li and Kirubarajan, <i>Estimation with Applications to Tracking and
 * Navigation</i>, 2001, chapter 6 (from memory). The numbers are ours: see the constants.
 *
 * @param level temperature at the last point, °C
 * @param slope its rate, K/s
 * @param levelVariance variance of {@code level}, K²
 * @param covariance of {@code level} and {@code slope}, K²/s
 * @param slopeVariance variance of {@code slope}, (K/s)²
 * @param noiseVariance variance of one reading around the curve, K², learned over about 20 readings
 * @param strain running mean of the normalised innovation; far from 0 where the curve bends faster than expected
 */
public record Trend(
        double level,
        double slope,
        double levelVariance,
        double covariance,
        double slopeVariance,
        double noiseVariance,
        double strain) {
    /**
     * How fast the slope wanders in calm times, K²/s³. Own choice: after a lift the rate of a bowl changes by about
     * 0.02 K/s in 30 s; a smaller value follows that too late, a larger one makes the rate of a 0.25 K adapter useless.
     */
    private static final double WANDER = 2e-6;

    /** How far a bowl's rate changes within half a minute or so, K/s. Own choice. */
    private static final double GOING_ON_SIGMA = 0.01;

    /** How much of the strain and of the noise is new with each reading. Own choice. */
    private static final double STRAIN_SHARE = 0.25;

    private static final double NOISE_SHARE = 0.05;

    public Trend {
        Require.finite(level, "level");
        Require.finite(slope, "slope");
        Require.within(levelVariance, 0, 1e9, "levelVariance");
        Require.within(slopeVariance, 0, 1e9, "slopeVariance");
        Require.within(noiseVariance, 0, 1e9, "noiseVariance");
        Require.finite(covariance, "covariance");
        Require.finite(strain, "strain");
    }

    /** A trend that knows one reading: its level, and of the slope only that it is within some kelvin a minute. */
    public static Trend startingAt(double celsius, double sigmaKelvin) {
        double variance = sigmaKelvin * sigmaKelvin;
        return new Trend(celsius, 0, variance, 0, 0.05 * 0.05, variance, 0);
    }

    /** The same level with another slope, K/s, that is known to about half a kelvin a minute. */
    Trend goingOn(double kelvinPerSecond) {
        return new Trend(level, kelvinPerSecond, levelVariance, 0, GOING_ON_SIGMA * GOING_ON_SIGMA, noiseVariance, 0);
    }

    /** Where the curve would be after {@code seconds} without any news. */
    public Trend after(double seconds) {
        Require.within(seconds, 0, 1e7, "seconds");
        double excess = Math.max(0, Math.abs(strain) - 0.8);
        double wander = WANDER * (1 + 40 * excess * excess);
        double s2 = seconds * seconds;
        return new Trend(
                level + slope * seconds,
                slope,
                Math.min(
                        1e6, levelVariance + 2 * seconds * covariance + s2 * slopeVariance + wander * s2 * seconds / 3),
                covariance + seconds * slopeVariance + wander * s2 / 2,
                Math.min(1e3, slopeVariance + wander * seconds),
                noiseVariance,
                strain);
    }

    /** How surprising a reading would be, in standard deviations, signed. */
    public double surprise(double celsius, double sigmaKelvin) {
        return (celsius - level) / Math.sqrt(levelVariance + readingVariance(sigmaKelvin));
    }

    /** The trend once it has taken in a reading at its own time. */
    public Trend with(double celsius, double sigmaKelvin) {
        double reading = readingVariance(sigmaKelvin);
        double total = levelVariance + reading;
        double innovation = celsius - level;
        double gainLevel = levelVariance / total;
        double gainSlope = covariance / total;
        // The innovation's square is noise plus what the filter did not know; only the noise part is learned.
        double noise = Math.max(0, innovation * innovation - levelVariance);
        double capped = Math.min(noise, 9 * reading);
        return new Trend(
                level + gainLevel * innovation,
                slope + gainSlope * innovation,
                (1 - gainLevel) * levelVariance,
                (1 - gainLevel) * covariance,
                Math.max(0, slopeVariance - gainSlope * covariance),
                noiseVariance + NOISE_SHARE * (capped - noiseVariance),
                strain + STRAIN_SHARE * (innovation / Math.sqrt(total) - strain));
    }

    /** Variance of {@code level + seconds · slope}, K². */
    public double varianceAhead(double seconds) {
        return Math.max(0, levelVariance + 2 * seconds * covariance + seconds * seconds * slopeVariance);
    }

    private double readingVariance(double sigmaKelvin) {
        return Math.max(sigmaKelvin * sigmaKelvin, noiseVariance);
    }
}
