package fifthform.curves.forecast;

import fifthform.curves.check.Require;

/**
 * A temperature that is not known for certain; its two halves may differ in width.
 *
 * @param celsius the middle, °C: as likely above as below
 * @param belowKelvin from the 5 % point to the middle, K
 * @param aboveKelvin from the middle to the 95 % point, K
 */
record Spread(double celsius, double belowKelvin, double aboveKelvin) {
    /** No turning point is known better; also keeps both tails above zero, so that they can be compared. */
    private static final double LEAST_HALF_KELVIN = 0.02;

    Spread {
        Require.finite(celsius, "celsius");
        Require.within(belowKelvin, 0, 1e6, "belowKelvin");
        Require.within(aboveKelvin, 0, 1e6, "aboveKelvin");
    }

    static Spread of(Outlook outlook) {
        return new Spread(
                outlook.celsius(),
                outlook.celsius() - outlook.lowerCelsius(),
                outlook.upperCelsius() - outlook.celsius());
    }

    Outlook after(double seconds) {
        return new Outlook(celsius, celsius - belowKelvin, celsius + aboveKelvin, seconds);
    }

    /** On a straight line to another, 0 here and 1 there. */
    Spread towards(Spread other, double share) {
        return new Spread(
                celsius + share * (other.celsius - celsius),
                belowKelvin + share * (other.belowKelvin - belowKelvin),
                aboveKelvin + share * (other.aboveKelvin - aboveKelvin));
    }

    Spread shifted(double kelvin) {
        return new Spread(celsius + kelvin, belowKelvin, aboveKelvin);
    }

    /**
     * This one and another, of which this one is right with the probability {@code fraction}. Variances add, and so does
     * that between the two middles, {@code p (1 − p) d²}: where they disagree the band is wider than either.
     */
    Spread mixed(double fraction, Spread other) {
        double rest = 1 - fraction;
        double apart = Outlook.NINETY_PERCENT * (celsius - other.celsius);
        double between = fraction * rest * apart * apart;
        return new Spread(
                fraction * celsius + rest * other.celsius,
                Math.sqrt(
                        fraction * belowKelvin * belowKelvin + rest * other.belowKelvin * other.belowKelvin + between),
                Math.sqrt(
                        fraction * aboveKelvin * aboveKelvin + rest * other.aboveKelvin * other.aboveKelvin + between));
    }

    /** How likely it is above this, 0 to 1; each half is taken as half of a normal distribution. */
    double aboveFraction(double limitCelsius) {
        double away = limitCelsius - celsius;
        return beyond(away / deviation(away > 0 ? aboveKelvin : belowKelvin));
    }

    /** How likely it is below this, 0 to 1. */
    double belowFraction(double limitCelsius) {
        double away = celsius - limitCelsius;
        return beyond(away / deviation(away > 0 ? belowKelvin : aboveKelvin));
    }

    private static double deviation(double halfKelvin) {
        return Math.max(LEAST_HALF_KELVIN, halfKelvin) / Outlook.NINETY_PERCENT;
    }

    /**
     * Share of a normal distribution beyond x standard deviations, to within 0.01, by a logistic curve:
     * {@code 1/(1 + e^(1.702 x))}. Source: textbook approximation, from memory; the test compares it with Commons Math.
     */
    static double beyond(double x) {
        return 1 / (1 + StrictMath.exp(1.702 * x));
    }
}
