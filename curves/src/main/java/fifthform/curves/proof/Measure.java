package fifthform.curves.proof;

import java.util.Objects;
import java.util.Optional;

/**
 * What a sample of one chocolate in one cup is judged by.
 *
 * @param scale the model's line for them
 * @param basis how well the cup is known
 * @param good the maker's own good curves, from three on
 */
public record Measure(TemperScale scale, Basis basis, Optional<GoodCurves> good) {
    /** How well the cup is known, and so how far a bend may lie from the model's by chance. */
    public enum Basis {
        /** Time constant and no-temper curve were measured. */
        CALIBRATED(0.7, 0.3),
        /** A thin metal cup of a known mass. */
        FROM_MASS(1.4, 0.4);

        final double bendKelvin;
        final double slopeKelvinPerMinute;

        Basis(double bendKelvin, double slopeKelvinPerMinute) {
            this.bendKelvin = bendKelvin;
            this.slopeKelvinPerMinute = slopeKelvinPerMinute;
        }
    }

    public Measure {
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(good, "good");
    }

    /** Whether the answer rests on a model instead of own good curves. */
    public boolean isProvisional() {
        return good.isEmpty();
    }
}
