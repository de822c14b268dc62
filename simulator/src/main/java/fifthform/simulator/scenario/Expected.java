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
 * @param tempers what crystals there should be at the end
 * @param verdict what the program should say of it in the end
 * @param raises alarms that must be raised
 * @param raisesNot alarms that must not be raised
 */
public record Expected(
        Optional<Landed> ends,
        Optional<Cooled> cools,
        Optional<Tempered> tempers,
        Optional<Verdict> verdict,
        Set<AlarmId> raises,
        Set<AlarmId> raisesNot) {
    /** Says nothing: kitchens that are drawn may end as they will. */
    public static final Expected ANYTHING =
            new Expected(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Set.of());

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

    /** What crystals there were in the end, by the true share of stable ones, forms V and VI, in the fat of the whole bowl. */
    public enum Tempered {
        /** The bars will not set in form V. */
        TOO_FEW,
        ENOUGH,
        /** Enough, and too thick to pour well. */
        THICK;

        /** Prints ask for 0.1 to 1.2, 1 to 3 or 2 to 4 % of the fat, from memory; the project takes this as outer fence. */
        private static final double FEWEST = 0.005;

        /** Above it the chocolate is more than 1.6 times as thick as without crystals; own choice. */
        private static final double THICK_FROM = 0.06;

        /** By the share of stable crystals in the fat, 0 to 1. */
        public static Tempered at(double stableFraction) {
            if (stableFraction < FEWEST) return TOO_FEW;
            return stableFraction > THICK_FROM ? THICK : ENOUGH;
        }

        /** The name in files: {@code too-few}, … */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Expected {
        Objects.requireNonNull(ends, "ends");
        Objects.requireNonNull(cools, "cools");
        Objects.requireNonNull(tempers, "tempers");
        Objects.requireNonNull(verdict, "verdict");
        raises = Set.copyOf(raises);
        raisesNot = Set.copyOf(raisesNot);
    }
}
