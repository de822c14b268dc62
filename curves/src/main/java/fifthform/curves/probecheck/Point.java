package fifthform.curves.probecheck;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;

/**
 * What a probe said at a point that is known.
 *
 * @param at when it was taken
 * @param target what is true there
 * @param readCelsius mean of its readings, °C
 * @param meanSigmaKelvin standard uncertainty of that mean by noise, last digit and slope, K, 0 to 5
 * @param readings how many were averaged, 1 or more
 */
public record Point(Instant at, Target target, double readCelsius, double meanSigmaKelvin, int readings) {
    public Point {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(target, "target");
        Require.within(readCelsius, -20, 150, "readCelsius");
        Require.within(meanSigmaKelvin, 0, 5, "meanSigmaKelvin");
        Require.within(readings, 1, Integer.MAX_VALUE, "readings");
    }

    /** How much it reads too high, K. */
    public double errorKelvin() {
        return readCelsius - target.trueCelsius();
    }

    /** Standard uncertainty of {@link #errorKelvin()}: those of point and mean in squares (JCGM 100:2008, 5.1.2). */
    public double sigmaKelvin() {
        return Math.sqrt(target.sigmaKelvin() * target.sigmaKelvin() + meanSigmaKelvin * meanSigmaKelvin);
    }
}
