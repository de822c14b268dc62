package fifthform.curves.plan;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is known before the batch. What is left out is taken as usual, and the plan says so.
 *
 * @param recipe the chocolate and its targets
 * @param grams chocolate to be melted, 50 to 20 000 g
 * @param bowl material and what earlier batches taught; its own amount is not looked at
 * @param bowlGrams the empty bowl, 20 to 10 000 g
 * @param panGrams the empty pan of the warm bath, 50 to 15 000 g
 * @param panMaterial what that pan is made of
 * @param bathGrams water in it, 200 to 30 000 g
 * @param tapCelsius water from the tap, 0 to 35 °C
 * @param quickBathCelsius the hotter bath for the quick way, 30 to 80 °C; else the recipe's
 * @param probeChecked whether the thermometer that reads the bath was checked
 * @param room the kitchen
 * @param barGrams one bar, 1 to 5000 g
 */
public record PlanRequest(
        Recipe recipe,
        double grams,
        Bowl bowl,
        OptionalDouble bowlGrams,
        OptionalDouble panGrams,
        BowlMaterial panMaterial,
        OptionalDouble bathGrams,
        OptionalDouble tapCelsius,
        OptionalDouble quickBathCelsius,
        boolean probeChecked,
        Room room,
        OptionalDouble barGrams) {
    /**
     * The kitchen's air.
     *
     * @param celsius 5 to 40 °C
     * @param humidityPercent 5 to 100 %
     */
    public record Room(OptionalDouble celsius, OptionalDouble humidityPercent) {
        /** Nobody said. */
        public static final Room UNSAID = new Room(OptionalDouble.empty(), OptionalDouble.empty());

        public Room {
            Require.within(celsius, 5, 40, "celsius");
            Require.within(humidityPercent, 5, 100, "humidityPercent");
        }
    }

    public PlanRequest {
        Objects.requireNonNull(recipe, "recipe");
        Require.within(grams, 50, 20_000, "grams");
        Objects.requireNonNull(bowl, "bowl");
        Require.within(bowlGrams, 20, 10_000, "bowlGrams");
        Require.within(panGrams, 50, 15_000, "panGrams");
        Objects.requireNonNull(panMaterial, "panMaterial");
        Require.within(bathGrams, 200, 30_000, "bathGrams");
        Require.within(tapCelsius, 0, 35, "tapCelsius");
        Require.within(quickBathCelsius, 30, 80, "quickBathCelsius");
        Objects.requireNonNull(room, "room");
        Require.within(barGrams, 1, 5000, "barGrams");
    }
}
