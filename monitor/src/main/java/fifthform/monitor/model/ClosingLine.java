package fifthform.monitor.model;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CauseText;
import java.util.OptionalDouble;

/** How a batch went, in one line. */
public final class ClosingLine {
    private ClosingLine() {}

    public static String of(Setup setup, Tally tally, Units units) {
        Recipe recipe = setup.recipe();
        String what =
                setup.origin() == Origin.SIMULATED ? CauseText.PRACTICE_BATCH_SIMULATED.say() : CauseText.BATCH.say();
        String kind = AgainWords.kind(setup.beginning());
        return what + recipe.name() + (kind.isEmpty() ? "" : ", " + kind) + ": " + verdict(setup, tally) + " "
                + figures(setup, tally, units);
    }

    private static String verdict(Setup setup, Tally tally) {
        return switch (tally.verdict(setup.recipe())) {
            case IN_RANGE ->
                setup.beginning().isInTemper()
                        ? CauseText.CAME_IN_TEMPER_AND_STAYED.say()
                        : CauseText.COOLED_LONG_ENOUGH_AND_STAYED.say();
            case OVER_RANGE -> CauseText.WENT_OVER_THE_WORKING_RANGE.say();
            case MELT_OUT -> CauseText.REACHED_MELT_OUT_PROVE_A.say();
            case NOT_COOLED -> CauseText.CAME_TO_THE_WORKING_RANGE.say();
            case UNFINISHED -> CauseText.ENDED_BEFORE_THE_WORKING_RANGE.say();
        };
    }

    private static String figures(Setup setup, Tally tally, Units units) {
        boolean kept =
                setup.beginning().isInTemper() && tally.lowestCoolCelsius().isEmpty();
        String highest = shown(tally.highestWorkCelsius(), units);
        String over = Spans.words(tally.overRange());
        return kept
                ? CauseText.HIGHEST_AND_OVER.say(highest, over)
                : CauseText.LOWEST_IN_THE_COOL_HIGHEST.say(shown(tally.lowestCoolCelsius(), units), highest, over);
    }

    private static String shown(OptionalDouble celsius, Units units) {
        return celsius.isPresent() ? units.withUnit(celsius.getAsDouble()) : CauseText.NOT_REACHED_CLOSING_LINE.say();
    }
}
