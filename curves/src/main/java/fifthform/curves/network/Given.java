package fifthform.curves.network;

import fifthform.curves.check.Require;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known beside the readings, as far as somebody said it or something measured it.
 *
 * @param lowCelsius low end of the recipe's working range, °C
 * @param bathCelsius the warm water: what a probe in it reads, or, once the melt is over, as planned for the rewarm, °C
 * @param amountGrams mass of chocolate, g
 * @param material of the bowl
 * @param learned what earlier batches of this bowl taught
 * @param roomCelsius temperature of the kitchen, °C
 * @param lagSeconds time constant of the tip, s, only where it was measured; above 0
 */
public record Given(
        double lowCelsius,
        OptionalDouble bathCelsius,
        OptionalDouble amountGrams,
        BowlMaterial material,
        Optional<LearnedCoast> learned,
        OptionalDouble roomCelsius,
        OptionalDouble lagSeconds) {
    public Given {
        Require.finite(lowCelsius, "lowCelsius");
        Require.within(bathCelsius, -20, 150, "bathCelsius");
        Require.within(amountGrams, Bowl.LEAST_GRAMS, Bowl.MOST_GRAMS, "amountGrams");
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(learned, "learned");
        Require.within(roomCelsius, -20, 60, "roomCelsius");
        Require.within(lagSeconds, Double.MIN_NORMAL, 120, "lagSeconds");
    }

    /** Nothing but the recipe. */
    public static Given nothingBut(double lowCelsius) {
        return new Given(
                lowCelsius,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                BowlMaterial.UNKNOWN,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
