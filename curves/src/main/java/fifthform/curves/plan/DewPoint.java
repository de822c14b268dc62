package fifthform.curves.plan;

import fifthform.curves.check.Require;

/**
 * Magnus's formula over water, −45 to 60 °C: {@code γ = a T/(b + T) + ln(RH)}, {@code Td = b γ/(a − γ)}.
 *
 * @param a without unit
 * @param bCelsius °C
 * @param e0Hectopascals saturation pressure at 0 °C, hPa
 */
public record DewPoint(double a, double bCelsius, double e0Hectopascals) {
    /** The set that WMO-No. 8 gives after Sonntag 1990; read on a secondary page, the guide itself was not opened. */
    public static final DewPoint WMO = new DewPoint(17.62, 243.12, 6.112);

    /** Alduchov and Eskridge, J Appl Meteorol 35 (1996) 601: a and b read on secondary pages, the rest from memory. */
    public static final DewPoint ALDUCHOV_ESKRIDGE = new DewPoint(17.625, 243.04, 6.1094);

    /** The temperature, °C, below which air of this temperature and humidity leaves water on a surface. */
    public double celsius(double airCelsius, double humidityPercent) {
        Require.within(airCelsius, -45, 60, "airCelsius");
        Require.within(humidityPercent, 1e-3, 100, "humidityPercent");
        double gamma = a * airCelsius / (bCelsius + airCelsius) + StrictMath.log(humidityPercent / 100);
        return bCelsius * gamma / (a - gamma);
    }

    /** Pressure of the vapour in such air, hPa. */
    public double hectopascals(double airCelsius, double humidityPercent) {
        return e0Hectopascals * humidityPercent / 100 * StrictMath.exp(a * airCelsius / (bCelsius + airCelsius));
    }
}
