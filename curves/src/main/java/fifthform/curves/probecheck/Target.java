package fifthform.curves.probecheck;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * A temperature that water keeps by itself.
 *
 * @param kind which
 * @param trueCelsius what it is, °C, −5 to 110
 * @param sigmaKelvin its standard uncertainty, K, above 0 and at most 2
 */
public record Target(Kind kind, double trueCelsius, double sigmaKelvin) {
    /** A point of water. */
    public enum Kind {
        ICE(0.2, 0.3),
        /** Bubbles shake the reading. */
        BOIL(0.4, 0.6);

        private final double steadyKelvinPerMinute;
        private final double calmKelvin;

        Kind(double steadyKelvinPerMinute, double calmKelvin) {
            this.steadyKelvinPerMinute = steadyKelvinPerMinute;
            this.calmKelvin = calmKelvin;
        }

        /** Slower than this it has settled: at 0.2 K/min a tip of 4 s lags by 0.01 K. Own choice. */
        double steadyKelvinPerMinute() {
            return steadyKelvinPerMinute;
        }

        /** Scatter that is still calm, besides that of the adapter's steps; own choice. */
        double calmKelvin() {
            return calmKelvin;
        }

        /** The word in files. */
        public String word() {
            return this == ICE ? "ice" : "boil";
        }
    }

    /** Crushed ice and water, stirred: standard uncertainty if made well (reference tables of this project). */
    private static final double ICE_SIGMA_KELVIN = 0.05;
    /** Boiling tap water itself: salts, depth of the tip, overheating; common practice, no source. */
    private static final double BOILING_WATER_SIGMA_KELVIN = 0.1;

    public Target {
        Objects.requireNonNull(kind, "kind");
        Require.within(trueCelsius, -5, 110, "trueCelsius");
        Require.within(sigmaKelvin, Double.MIN_NORMAL, 2, "sigmaKelvin");
    }

    /** Ice melting in water. */
    public static Target ice() {
        return new Target(Kind.ICE, 0, ICE_SIGMA_KELVIN);
    }

    /** Water at a rolling boil; about 0.2 K with the altitude alone, 0.1 K with the pressure of the day. */
    public static Target boil(AirPressure air) {
        double byAir = BoilingPoint.slopeKelvinPerKilopascal(air.kilopascals()) * air.sigmaKilopascals();
        double sigma = Math.sqrt(byAir * byAir + BOILING_WATER_SIGMA_KELVIN * BOILING_WATER_SIGMA_KELVIN);
        return new Target(Kind.BOIL, BoilingPoint.celsius(air.kilopascals()), sigma);
    }
}
