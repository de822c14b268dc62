package fifthform.simulator.bowl;

/**
 * Water vapour over water, and how fast air that carries heat away carries vapour away.
 *
 * <p>Saturation pressure: {@code 611.21 exp((18.678 − T/234.5) T/(257.14 + T))} Pa, T in °C. Source: A. L. Buck, J. Appl.
 * Meteorol. 20 (1981) 1527 with the coefficients of 1996; from memory, tested against steam-table values. It is tabulated
 * once for each kelvin and read with a straight line between, within 0.1 %: an exponential in every step would take most
 * of the time.
 *
 * <p>Vapour follows heat by the analogy of Lewis: {@code h_mass = h / (ρ c_p Le^(2/3))}, Le = 0.87 for water in air.
 * Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, chapter 6; from memory.
 */
final class Vapour {
    private static final double GAS_JOULES_PER_KILOGRAM_KELVIN = 461.5;
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;
    private static final double LEWIS_NUMBER_TO_TWO_THIRDS = StrictMath.pow(0.87, 2.0 / 3);
    private static final double AIR_JOULES_PER_CUBIC_METRE_KELVIN = 1.15 * 1007;
    private static final int COLDEST_CELSIUS = -40;
    private static final double[] SATURATED_KILOGRAMS_PER_CUBIC_METRE = table();

    private Vapour() {}

    private static double[] table() {
        double[] table = new double[192];
        for (int i = 0; i < table.length; i++) {
            double celsius = COLDEST_CELSIUS + i;
            table[i] = pascals(celsius) / (GAS_JOULES_PER_KILOGRAM_KELVIN * (celsius + KELVIN_AT_ZERO_CELSIUS));
        }
        return table;
    }

    /** Saturation pressure over water, Pa. */
    static double pascals(double celsius) {
        return 611.21 * StrictMath.exp((18.678 - celsius / 234.5) * celsius / (257.14 + celsius));
    }

    /** Density of saturated vapour over water, kg/m³; −40 to 150 °C, beyond which the end's value holds. */
    static double saturated(double celsius) {
        double place = Math.max(0, Math.min(190.999, celsius - COLDEST_CELSIUS));
        int below = (int) place;
        double from = SATURATED_KILOGRAMS_PER_CUBIC_METRE[below];
        return from + (place - below) * (SATURATED_KILOGRAMS_PER_CUBIC_METRE[below + 1] - from);
    }

    /** Heat of evaporation, J/kg. Source: 2501 − 2.361 T kJ/kg, a straight line through the steam table; from memory. */
    static double latentJoulesPerKilogram(double celsius) {
        return 2_501_000 - 2361 * celsius;
    }

    /** Mass transfer coefficient, m/s, where air takes heat away with this coefficient, W/m²K. */
    static double metresPerSecond(double wattsPerSquareMetreKelvin) {
        return wattsPerSquareMetreKelvin / (AIR_JOULES_PER_CUBIC_METRE_KELVIN * LEWIS_NUMBER_TO_TWO_THIRDS);
    }

    /**
     * Free convection over an open pot, W/m²K: {@code Nu = 0.54 Ra^(1/4)} with a pot's area over its rim, 0.05 m, which
     * for warm air is {@code 1.36 (ΔT/L)^(1/4)}; ΔT with what moist air is lighter by, {@code 0.61 T ρ_v/ρ_air}. Source:
     * Incropera and DeWitt, chapter 9, warm plate facing up; from memory.
     */
    static double overOpenWater(double waterCelsius, Room room) {
        double lighterKelvin = 0.61 * 293 / 1.15 * (saturated(waterCelsius) - room.vapour());
        double kelvin = Math.max(0, waterCelsius - room.celsius() + lighterKelvin);
        return 1.36 * Math.sqrt(Math.sqrt(kelvin / 0.05));
    }

    /** What leaves open water each second, kg/m²s; never less than nothing. */
    static double fromOpenWater(double waterCelsius, Room room) {
        double drive = saturated(waterCelsius) - room.vapour();
        return metresPerSecond(overOpenWater(waterCelsius, room)) * Math.max(0, drive);
    }
}
