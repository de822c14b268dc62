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
        String kind = AgainWords.kind(setup.beginning());
        return what + recipe.name() + (kind.isEmpty() ? "" : ", " + kind) + ": " + verdict(setup, tally) + " "
                + figures(setup, tally, units);
    }

    private static String verdict(Setup setup, Tally tally) {
        return switch (tally.verdict(setup.recipe())) {
            case IN_RANGE -> before(setup) + ", and stayed below the warning temperature.";
            case OVER_RANGE -> "went over the working range, but not to melt-out.";
            case MELT_OUT -> "reached melt-out: prove a sample before you pour.";
            case NOT_COOLED -> "came to the working range without the full hold in the cool.";
            case UNFINISHED -> "ended before the working range.";
        };
    }

    private static String before(Setup setup) {
        return setup.beginning().isInTemper() ? "came in temper" : "cooled long enough";
    }

    private static String figures(Setup setup, Tally tally, Units units) {
        boolean kept =
                setup.beginning().isInTemper() && tally.lowestCoolCelsius().isEmpty();
        String cool = kept
                ? "Highest "
                : "Lowest in the cool " + shown(tally.lowestCoolCelsius(), units) + ", highest after it ";
        return cool + shown(tally.highestWorkCelsius(), units) + ", " + Spans.words(tally.overRange())
                + " over the working range.";
    }

    private static String shown(OptionalDouble celsius, Units units) {
        return celsius.isPresent() ? units.withUnit(celsius.getAsDouble()) : "not reached";
    }
}
