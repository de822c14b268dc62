package fifthform.curves.setting;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.Optional;

/**
 * How long a bar takes to set, as one lump in air of one temperature that takes heat from both its faces; the mould is left
 * out. {@code τ = m″c/2h}; down to 25 °C {@code τ·ln((T₀ − Ta)/(25 − Ta))}, there {@code 0.8·46 kJ/kg·m″/(2h(25 − Ta))} for
 * the heat of setting, and down to 18 °C {@code τ·ln((25 − Ta)/(18 − Ta))}; where the air is warmer than that, to the end
 * of setting. Formula and figures are those of this project's table of setting (computed); nothing was measured.
 */
public final class SetTime {
    /** Heat that air takes away, W/m²K. */
    public enum Air {
        STILL(12),
        MOVING(30);

        private final double wattsPerSquareMetreKelvin;

        Air(double wattsPerSquareMetreKelvin) {
            this.wattsPerSquareMetreKelvin = wattsPerSquareMetreKelvin;
        }

        double wattsPerSquareMetreKelvin() {
            return wattsPerSquareMetreKelvin;
        }
    }

    private static final double FROM_CELSIUS = 31;
    private static final double SETS_AT_CELSIUS = 25;
    private static final double COLD_CELSIUS = 18;
    private static final double JOULES_PER_KILOGRAM_KELVIN = 1590;
    private static final double JOULES_PER_KILOGRAM = 0.8 * 46_000;
    private static final double KILOGRAMS_PER_CUBIC_METRE = 1300;

    /** Nearer than this to 25 °C nothing sets within an evening, K. */
    private static final double LEAST_KELVIN = 1;

    private SetTime() {}

    /**
     * How long, or empty where the air is too warm for it.
     *
     * @param millimetres how thick the bar is, 1 to 100 mm
     * @param airCelsius −30 to 40 °C
     */
    public static Optional<Duration> of(double millimetres, double airCelsius, Air air) {
        Require.within(millimetres, 1, 100, "millimetres");
        Require.within(airCelsius, -30, 40, "airCelsius");
        if (airCelsius > SETS_AT_CELSIUS - LEAST_KELVIN) return Optional.empty();
        double kilograms = KILOGRAMS_PER_CUBIC_METRE * millimetres / 1000;
        double both = 2 * air.wattsPerSquareMetreKelvin();
        double tau = kilograms * JOULES_PER_KILOGRAM_KELVIN / both;
        double drive = SETS_AT_CELSIUS - airCelsius;
        double seconds = tau * StrictMath.log((FROM_CELSIUS - airCelsius) / drive)
                + JOULES_PER_KILOGRAM * kilograms / (both * drive);
        boolean coldEnough = airCelsius < COLD_CELSIUS - LEAST_KELVIN;
        if (coldEnough) seconds += tau * StrictMath.log(drive / (COLD_CELSIUS - airCelsius));
        return Optional.of(Duration.ofSeconds(Math.round(seconds)));
    }
}
