package fifthform.curves.probecheck;

import fifthform.curves.check.Require;

/**
 * Whether two probes say the same in the same stirred water.
 *
 * @param oneCelsius corrected mean of the first
 * @param otherCelsius corrected mean of the second
 * @param sigmaKelvin standard uncertainty of the difference as it was measured: both means and the bath, K, above 0
 * @param allowedKelvin two standard uncertainties, with what is left of doubt in both corrections, K
 */
public record Agreement(double oneCelsius, double otherCelsius, double sigmaKelvin, double allowedKelvin) {
    public Agreement {
        Require.within(oneCelsius, -40, 200, "oneCelsius");
        Require.within(otherCelsius, -40, 200, "otherCelsius");
        Require.within(sigmaKelvin, Double.MIN_NORMAL, 20, "sigmaKelvin");
        Require.within(allowedKelvin, 2 * sigmaKelvin, 50, "allowedKelvin");
    }

    /** First minus second, K. */
    public double differenceKelvin() {
        return oneCelsius - otherCelsius;
    }

    /** Whether the difference is no more than their uncertainties explain. */
    public boolean holds() {
        return Math.abs(differenceKelvin()) <= allowedKelvin;
    }

    /** Whether the difference is no more than could be measured at all. */
    public boolean isAsCloseAsMeasured() {
        return Math.abs(differenceKelvin()) <= 2 * sigmaKelvin;
    }
}
