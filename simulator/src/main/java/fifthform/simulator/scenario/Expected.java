package fifthform.simulator.scenario;

import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.review.Verdict;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How a scenario should end, as its file says. What is left open may be anything.
 *
 * @param ends where the hottest of the rewarm should lie
 * @param cools how far the cooling before it should go
 * @param verdict what the program should say of it in the end
 * @param raises alarms that must be raised
 * @param raisesNot alarms that must not be raised
 */
public record Expected(
        Optional<Landed> ends,
        Optional<Cooled> cools,
        Optional<Verdict> verdict,
        Set<AlarmId> raises,
        Set<AlarmId> raisesNot) {
    /** Says nothing: kitchens that are drawn may end as they will. */
    public static final Expected ANYTHING =
            new Expected(Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Set.of());

    /** How far the cooling went, by the coolest of the bulk before the rewarm. */
    public enum Cooled {
        /** Never as cool as the recipe asks. */
        TOO_LITTLE,
        ENOUGH,
        /** More than a kelvin below what the recipe asks: thick, and full of the wrong crystals. */
        TOO_FAR;

        /** Below the cool range by so much, as the program's own alarm has it, K. Our own choice. */
        private static final double FAR_KELVIN = 1.0;

        /** By the coolest of the bulk, °C. */
        public static Cooled at(double lowestCelsius, Recipe recipe) {
            CelsiusRange cool = recipe.cool().range();
            if (lowestCelsius > cool.highCelsius()) return TOO_LITTLE;
            return lowestCelsius < cool.lowCelsius() - FAR_KELVIN ? TOO_FAR : ENOUGH;
        }

        /** The name in files: {@code too-little}, … */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Expected {
        Objects.requireNonNull(ends, "ends");
        Objects.requireNonNull(cools, "cools");
        Objects.requireNonNull(verdict, "verdict");
        raises = Set.copyOf(raises);
        raisesNot = Set.copyOf(raisesNot);
    }
}
