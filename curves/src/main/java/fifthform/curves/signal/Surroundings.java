package fifthform.curves.signal;

import fifthform.curves.check.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * What is around a probe's tip, as far as known, for judging where the tip is.
 *
 * @param roomCelsius temperature of the kitchen: measured, said, or usual, °C
 * @param water the water under the bowl; empty on the table and while the chocolate melts, when lumps and latent heat
 *     let an honest tip stand still or jump
 * @param said the water into which the maker has just put the bowl, by key, whatever the readings make of it
 * @param chocolate whether it has melted
 */
public record Surroundings(double roomCelsius, Optional<Water> water, Optional<Water> said, Chocolate chocolate) {
    /** What the tip is in. */
    public enum Chocolate {
        /** Lumps and latent heat let an honest tip stand still or jump. */
        MELTING,
        LIQUID
    }

    /** Around a tip in melted chocolate. */
    public Surroundings(double roomCelsius, Optional<Water> water, Optional<Water> said) {
        this(roomCelsius, water, said, Chocolate.LIQUID);
    }

    public Surroundings {
        Objects.requireNonNull(chocolate, "chocolate");
        Require.finite(roomCelsius, "roomCelsius");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(said, "said");
    }

    /** The water where the maker said so and the readings do not contradict. */
    Optional<Water> waterTold() {
        return water.filter(w -> w.known() == Water.Known.TOLD);
    }
}
