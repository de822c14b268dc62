package fifthform.curves.probecheck;

import fifthform.curves.check.Require;
import fifthform.curves.setup.Correction;
import fifthform.curves.thermocouple.Sensor;

/**
 * Whether a boiling point is plausible with the correction in use: all that can be said of one without the pressure of
 * the day.
 *
 * @param offKelvin corrected reading minus boiling point
 * @param allowedKelvin two combined standard uncertainties of that difference, K, above 0
 */
public record Boiling(double offKelvin, double allowedKelvin) {
    public Boiling {
        Require.finite(offKelvin, "offKelvin");
        Require.within(allowedKelvin, Double.MIN_NORMAL, 50, "allowedKelvin");
    }

    /** The parts are those of point, correction, wire and chip, in squares (JCGM 100:2008, 5.1.2 and 6.2). */
    public static Boiling of(Point boil, Correction correction, Sensor sensor, Curve curve) {
        double off = correction.apply(boil.readCelsius()) - boil.target().trueCelsius();
        double wire = Allowed.wireShare(sensor) * boil.target().trueCelsius() / Math.sqrt(3);
        double chip = curve.lowAfterIceKelvin(sensor, boil.target().trueCelsius()).stream()
                .map(low -> Curve.standardKelvin(sensor, low))
                .sum();
        double point = boil.sigmaKelvin();
        double left = correction.sigmaKelvin();
        return new Boiling(off, 2 * Math.sqrt(point * point + wire * wire + chip * chip + left * left));
    }

    public boolean isPlausible() {
        return Math.abs(offKelvin) <= allowedKelvin;
    }
}
