package fifthform.curves.learning;

import fifthform.curves.check.Require;

/**
 * Where a limit lies: half of what is believed below the middle, and 90 % between the ends.
 *
 * @param lowerCelsius 5 % point, °C
 * @param middleCelsius median, °C
 * @param upperCelsius 95 % point, °C
 */
public record Band(double lowerCelsius, double middleCelsius, double upperCelsius) {
    public Band {
        Require.finite(lowerCelsius, "lowerCelsius");
        Require.within(middleCelsius, lowerCelsius, upperCelsius, "middleCelsius");
    }

    public boolean contains(double celsius) {
        return celsius >= lowerCelsius && celsius <= upperCelsius;
    }

    public double widthKelvin() {
        return upperCelsius - lowerCelsius;
    }
}
