package fifthform.curves.probecheck;

import fifthform.curves.check.Require;

/**
 * The temperature at which pure water boils under a pressure.
 *
 * <p>Source: IAPWS R7-97(2012), Industrial Formulation 1997, backward equation of region 4 (equation 31) with the
 * coefficients of its table 34, from memory. The release's table 36 gives 372.755919 K, 453.035632 K and 584.149488 K for
 * 0.1, 1 and 10 MPa, which the tests hold.
 */
public final class BoilingPoint {
    /** Lowest pressure of the equation, that of the triple point, kPa. */
    public static final double LOWEST_KILOPASCALS = 0.611213;
    /** Highest pressure of the equation, that of the critical point, kPa. */
    public static final double HIGHEST_KILOPASCALS = 22_064;

    private static final double N1 = 0.11670521452767e4;
    private static final double N2 = -0.72421316703206e6;
    private static final double N3 = -0.17073846940092e2;
    private static final double N4 = 0.12020824702470e5;
    private static final double N5 = -0.32325550322333e7;
    private static final double N6 = 0.14915108613530e2;
    private static final double N7 = -0.48232657361591e4;
    private static final double N8 = 0.40511340542057e6;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 0.65017534844798e3;
    private static final double ZERO_CELSIUS_KELVIN = 273.15;

    private BoilingPoint() {}

    /**
     * Saturation temperature, °C.
     *
     * @param kilopascals absolute pressure over the water, {@value #LOWEST_KILOPASCALS} to
     *     {@value #HIGHEST_KILOPASCALS} kPa
     */
    public static double celsius(double kilopascals) {
        Require.within(kilopascals, LOWEST_KILOPASCALS, HIGHEST_KILOPASCALS, "kilopascals");
        double beta = Math.sqrt(Math.sqrt(kilopascals / 1000));
        double e = beta * beta + N3 * beta + N6;
        double f = N1 * beta * beta + N4 * beta + N7;
        double g = N2 * beta * beta + N5 * beta + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2 - ZERO_CELSIUS_KELVIN;
    }

    /** How much the boiling point rises with the pressure, K/kPa; about 0.28 near sea level. */
    static double slopeKelvinPerKilopascal(double kilopascals) {
        double step = 0.01;
        return (celsius(kilopascals + step) - celsius(kilopascals - step)) / (2 * step);
    }
}
