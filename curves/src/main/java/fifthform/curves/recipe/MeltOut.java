package fifthform.curves.recipe;

import fifthform.curves.check.Require;

/**
 * Where the good crystals begin to go.
 *
 * @param warnCelsius over the working range: too warm, crystals still safe for a while; °C
 * @param limitCelsius melt-out: form V goes within minutes above this; °C
 */
public record MeltOut(double warnCelsius, double limitCelsius) {
    /** Distance of the guard below melt-out, K. This project's own choice. */
    private static final double GUARD_KELVIN = 0.8;

    public MeltOut {
        Require.within(warnCelsius, -20, 150, "warnCelsius");
        Require.within(limitCelsius, -20, 150, "limitCelsius");
        if (!(warnCelsius < limitCelsius)) {
            throw new IllegalArgumentException(
                    "warnCelsius must be below limitCelsius, were " + warnCelsius + " and " + limitCelsius);
        }
    }

    /** The last line before melt-out that still leaves time to act, °C. */
    public double guardCelsius() {
        return limitCelsius - GUARD_KELVIN;
    }
}
