package fifthform.curves.probecheck;

import fifthform.curves.check.Require;

/**
 * Pressure of the air by altitude in the lowest layer of the standard atmosphere.
 *
 * <p>Source: ISO 2533:1975, from memory: 101.325 kPa and 288.15 K at sea level, −6.5 K/km, {@code p = p₀ (1 − L h /
 * T₀)^(g/(R L))}. Altitude is taken for geopotential altitude; at 3000 m that is 1.4 m or 0.01 kPa.
 */
final class StandardAir {
    /** The lowest land, on the shore of the Dead Sea, is at about −430 m (from memory). */
    static final double LOWEST_METRES = -430;
    /** The highest towns are at about 5100 m (from memory). */
    static final double HIGHEST_METRES = 5500;

    static final double SEA_LEVEL_KILOPASCALS = 101.325;
    private static final double SEA_LEVEL_KELVIN = 288.15;
    private static final double LAPSE_KELVIN_PER_METRE = 0.0065;
    /** g/(R L) with g = 9.80665 m/s² and R = 287.05287 J/(kg K). */
    private static final double EXPONENT = 9.80665 / (287.05287 * LAPSE_KELVIN_PER_METRE);

    private StandardAir() {}

    static double kilopascals(double altitudeMetres) {
        return SEA_LEVEL_KILOPASCALS * shareOfSeaLevel(altitudeMetres);
    }

    /** Pressure there over pressure at sea level. */
    static double shareOfSeaLevel(double altitudeMetres) {
        Require.within(altitudeMetres, LOWEST_METRES, HIGHEST_METRES, "altitudeMetres");
        return StrictMath.pow(1 - LAPSE_KELVIN_PER_METRE * altitudeMetres / SEA_LEVEL_KELVIN, EXPONENT);
    }

    /** The altitude at which the standard atmosphere has this pressure, m. */
    static double altitudeMetres(double kilopascals) {
        double share = StrictMath.pow(kilopascals / SEA_LEVEL_KILOPASCALS, 1 / EXPONENT);
        return SEA_LEVEL_KELVIN / LAPSE_KELVIN_PER_METRE * (1 - share);
    }
}
