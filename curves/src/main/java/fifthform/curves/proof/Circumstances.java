package fifthform.curves.proof;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What else is known of a test.
 *
 * @param start between which temperatures the sample must go into the ice
 * @param bathCelsius what the probe read in the ice water before, °C; empty where it was not tried
 * @param iceLeft whether there was ice at the end; empty where nobody looked
 * @param cup the cup, where it was calibrated
 */
public record Circumstances(
        CelsiusRange start, OptionalDouble bathCelsius, Optional<Boolean> iceLeft, Optional<CupTraits> cup) {
    /** A sample that warm has lost seed, one that cold has grown some. Own choice. */
    private static final double BELOW_WORK_KELVIN = 3;

    private static final CelsiusRange MELTED = new CelsiusRange(32, 37);

    public Circumstances {
        Objects.requireNonNull(start, "start");
        Require.within(bathCelsius, -20, 150, "bathCelsius");
        Objects.requireNonNull(iceLeft, "iceLeft");
        Objects.requireNonNull(cup, "cup");
    }

    /** A sample from a bowl of this chocolate. */
    public static Circumstances ofSample(Recipe recipe) {
        double low = recipe.work().range().lowCelsius() - BELOW_WORK_KELVIN;
        CelsiusRange start = new CelsiusRange(low, recipe.meltOut().limitCelsius() + 0.5);
        return new Circumstances(start, OptionalDouble.empty(), Optional.empty(), Optional.empty());
    }

    /** Melted chocolate, to learn how the cup cools. */
    public static Circumstances ofMelted() {
        return new Circumstances(MELTED, OptionalDouble.empty(), Optional.empty(), Optional.empty());
    }

    public Circumstances withBath(double celsius) {
        return new Circumstances(start, OptionalDouble.of(celsius), iceLeft, cup);
    }

    public Circumstances withIceLeft(boolean left) {
        return new Circumstances(start, bathCelsius, Optional.of(left), cup);
    }

    public Circumstances withCup(CupTraits traits) {
        return new Circumstances(start, bathCelsius, iceLeft, Optional.of(traits));
    }

    /** The bath that a curve is held against: as measured, else that of good ice water. */
    public double bathOrIceCelsius() {
        return Math.max(-1, Math.min(3, bathCelsius.orElse(0)));
    }
}
