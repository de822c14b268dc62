package fifthform.curves.network;

import fifthform.curves.check.Require;

/** Five points of a distribution in rising order, K above a base: the 5, 25, 50, 75 and 95 % point. */
public record Points(
        double fiveKelvin,
        double quarterKelvin,
        double halfKelvin,
        double threeQuartersKelvin,
        double ninetyFiveKelvin) {
    public Points {
        Require.finite(fiveKelvin, "fiveKelvin");
        Require.within(quarterKelvin, fiveKelvin, 1e6, "quarterKelvin");
        Require.within(halfKelvin, quarterKelvin, 1e6, "halfKelvin");
        Require.within(threeQuartersKelvin, halfKelvin, 1e6, "threeQuartersKelvin");
        Require.within(ninetyFiveKelvin, threeQuartersKelvin, 1e6, "ninetyFiveKelvin");
    }
}
