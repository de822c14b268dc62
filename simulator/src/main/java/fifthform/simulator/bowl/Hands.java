package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * What somebody does with the bowl at a moment.
 *
 * @param spot where the bowl stands
 * @param stirVigourFraction 0 left alone, 1 stirred well
 * @param towel whether the outside is being wiped
 */
public record Hands(Spot spot, double stirVigourFraction, Towel towel) {
    /** Whether the outside of the bowl is being wiped. */
    public enum Towel {
        LEFT,
        WIPING
    }

    public Hands {
        Objects.requireNonNull(spot, "spot");
        Require.within(stirVigourFraction, 0, 1, "stirVigourFraction");
        Objects.requireNonNull(towel, "towel");
    }

    /** The bowl stands there, stirred well. */
    public static Hands stirringAt(Spot spot) {
        return new Hands(spot, 1, Towel.LEFT);
    }

    /** The bowl stands there, left alone. */
    public static Hands leaving(Spot spot) {
        return new Hands(spot, 0, Towel.LEFT);
    }
}
