package fifthform.curves.forecast;

import fifthform.curves.check.Require;

/**
 * A temperature to come, with a band that should hold it nine times in ten.
 *
 * @param celsius the middle, °C
 * @param lowerCelsius 5 % point
 * @param upperCelsius 95 % point
 * @param seconds how far ahead, s
 */
public record Outlook(double celsius, double lowerCelsius, double upperCelsius, double seconds) {
    /** Standard deviations from the middle to the 5 and 95 % points of a normal distribution. */
    static final double NINETY_PERCENT = 1.645;

    public Outlook {
        Require.finite(celsius, "celsius");
        Require.within(lowerCelsius, -1e6, celsius, "lowerCelsius");
        Require.within(upperCelsius, celsius, 1e6, "upperCelsius");
        Require.within(seconds, 0, 1e6, "seconds");
    }

    static Outlook around(double celsius, double sigmaKelvin, double seconds) {
        double half = NINETY_PERCENT * sigmaKelvin;
        return new Outlook(celsius, celsius - half, celsius + half, seconds);
    }

    public double sigmaKelvin() {
        return (upperCelsius - lowerCelsius) / (2 * NINETY_PERCENT);
    }
}
