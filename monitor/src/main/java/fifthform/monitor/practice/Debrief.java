package fifthform.monitor.practice;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.Ending;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How a training went, in true temperatures of the simulated chocolate, which no thermometer could show.
 *
 * @param recipe by which it is judged
 * @param ending where it ended
 * @param shownCelsius for each lift off the warm water where the screen had just said that it would turn, °C
 * @param answers each cue to move the bowl
 * @param underFor how long below the working range once it had been reached
 * @param meltOuts how often melt-out was reached after the cool
 * @param stirredFraction share of the time in which it was stirred, 0 to 1
 * @param timesDried how often the bowl was dried
 */
public record Debrief(
        Recipe recipe,
        Ending ending,
        List<OptionalDouble> shownCelsius,
        List<CueAnswer> answers,
        Duration underFor,
        int meltOuts,
        double stirredFraction,
        int timesDried) {
    public Debrief {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(ending, "ending");
        shownCelsius = List.copyOf(shownCelsius);
        answers = List.copyOf(answers);
        Require.notNegative(underFor, "underFor");
        Require.within(meltOuts, 0, 100_000, "meltOuts");
        Require.within(stirredFraction, 0, 1, "stirredFraction");
        Require.within(timesDried, 0, 100_000, "timesDried");
    }
}
