package fifthform.curves.recipe;

import fifthform.curves.check.Require;

/** A range of temperatures, °C, low below high, both between −20 and 150 °C. */
public record CelsiusRange(double lowCelsius, double highCelsius) {
    public CelsiusRange {
        Require.within(lowCelsius, -20, 150, "lowCelsius");
        Require.within(highCelsius, -20, 150, "highCelsius");
        if (!(lowCelsius < highCelsius)) {
            throw new IllegalArgumentException(
                    "lowCelsius must be below highCelsius, were " + lowCelsius + " and " + highCelsius);
        }
    }

    public double midCelsius() {
        return (lowCelsius + highCelsius) / 2;
    }

    public double widthKelvin() {
        return highCelsius - lowCelsius;
    }

    public boolean contains(double celsius) {
        return celsius >= lowCelsius && celsius <= highCelsius;
    }
}
