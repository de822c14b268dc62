package fifthform.monitor.model;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.settings.Units;
import java.util.OptionalDouble;

/** How a batch went, in one line. */
public final class ClosingLine {
    private ClosingLine() {}

    public static String of(Setup setup, Tally tally, Units units) {
        Recipe recipe = setup.recipe();
        String what = setup.origin() == Origin.SIMULATED ? "Practice batch (simulated), " : "Batch, ";
        return what + recipe.name() + ": " + verdict(tally, recipe) + " " + figures(tally, units);
    }

    private static String verdict(Tally tally, Recipe recipe) {
        return switch (tally.verdict(recipe)) {
            case IN_RANGE -> "cooled long enough, and stayed below the warning temperature.";
            case OVER_RANGE -> "went over the working range, but not to melt-out.";
            case MELT_OUT -> "reached melt-out: prove a sample before you pour.";
            case NOT_COOLED -> "came to the working range without the full hold in the cool.";
            case UNFINISHED -> "ended before the working range.";
        };
    }

    private static String figures(Tally tally, Units units) {
        return "Lowest in the cool " + shown(tally.lowestCoolCelsius(), units) + ", highest after it "
                + shown(tally.highestWorkCelsius(), units) + ", " + Spans.words(tally.overRange())
                + " over the working range.";
    }

    private static String shown(OptionalDouble celsius, Units units) {
        return celsius.isPresent() ? units.withUnit(celsius.getAsDouble()) : "not reached";
    }
}
