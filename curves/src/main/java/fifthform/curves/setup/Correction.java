package fifthform.curves.setup;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * What a probe check found: {@code true = gain · read + offset}.
 *
 * @param gain slope, 0.9 to 1.1
 * @param offsetKelvin offset at 0 °C, −10 to 10 K
 * @param sigmaKelvin standard uncertainty left after the correction, 0 to 5 K
 * @param checkedAt when the check was made; empty for a probe that was never checked
 */
public record Correction(double gain, double offsetKelvin, double sigmaKelvin, Optional<Instant> checkedAt) {
    /**
     * An unchecked probe: no correction. Its {@code sigmaKelvin} only fills its place: how far such a probe can be trusted
     * follows from its sensor ({@link ProbeSetup#budget}).
     */
    public static final Correction UNCHECKED = new Correction(1, 0, 1.0, Optional.empty());

    public Correction {
        Require.within(gain, 0.9, 1.1, "gain");
        Require.within(offsetKelvin, -10, 10, "offsetKelvin");
        Require.within(sigmaKelvin, 0, 5, "sigmaKelvin");
        Objects.requireNonNull(checkedAt, "checkedAt");
    }

    /** A correction of which no date is known. */
    public Correction(double gain, double offsetKelvin, double sigmaKelvin) {
        this(gain, offsetKelvin, sigmaKelvin, Optional.empty());
    }

    /** Whether a check stands behind it. */
    public boolean isChecked() {
        return checkedAt.isPresent() || !equals(UNCHECKED);
    }

    /** The temperature at which the probe reads this, °C. */
    public double apply(double readCelsius) {
        return gain * readCelsius + offsetKelvin;
    }
}
