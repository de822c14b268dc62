package fifthform.simulator.bowl;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * What somebody does with the bowl at a moment.
 *
 * @param spot where the bowl stands
 * @param stirVigourFraction 0 left alone, 1 stirred well
 * @param towel whether the outside is being wiped
 * @param blower whether hot air is blown at the chocolate
 * @param probe where the chocolate's probe is
 * @param boxCelsius air of the warm box, 15 to 60 °C; of no meaning while the bowl is not in it
 */
public record Hands(
        Spot spot, double stirVigourFraction, Towel towel, Blower blower, ProbePlace probe, double boxCelsius) {
    /** The box before anybody turns it. */
    public static final double USUAL_BOX_CELSIUS = 32;

    /** Whether the outside of the bowl is being wiped. */
    public enum Towel {
        LEFT,
        WIPING
    }

    public Hands {
        Objects.requireNonNull(spot, "spot");
        Require.within(stirVigourFraction, 0, 1, "stirVigourFraction");
        Objects.requireNonNull(towel, "towel");
        Objects.requireNonNull(blower, "blower");
        Objects.requireNonNull(probe, "probe");
        Require.within(boxCelsius, 15, 60, "boxCelsius");
    }

    /** There is no box. */
    public Hands(Spot spot, double stirVigourFraction, Towel towel, Blower blower, ProbePlace probe) {
        this(spot, stirVigourFraction, towel, blower, probe, USUAL_BOX_CELSIUS);
    }

    /** Nothing blown, the probe in the chocolate. */
    public Hands(Spot spot, double stirVigourFraction, Towel towel) {
        this(spot, stirVigourFraction, towel, Blower.OFF, ProbePlace.IN_CHOCOLATE);
    }

    /** The bowl stands there, stirred well. */
    public static Hands stirringAt(Spot spot) {
        return new Hands(spot, 1, Towel.LEFT);
    }

    /** The bowl stands there, left alone. */
    public static Hands leaving(Spot spot) {
        return new Hands(spot, 0, Towel.LEFT);
    }

    /** The same with hot air, or without. */
    public Hands blowing(Blower with) {
        return new Hands(spot, stirVigourFraction, towel, with, probe, boxCelsius);
    }

    /** The same with the probe there. */
    public Hands probeAt(ProbePlace place) {
        return new Hands(spot, stirVigourFraction, towel, blower, place, boxCelsius);
    }
}
