package fifthform.monitor.practice;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.simulator.bench.Ending;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
 * @param crystals what was said of the crystals, and what there was
 * @param beginning what it began with
 * @param stay what came of the hold that was planned
 */
public record Debrief(
        Recipe recipe,
        Ending ending,
        List<OptionalDouble> shownCelsius,
        List<CueAnswer> answers,
        Duration underFor,
        int meltOuts,
        double stirredFraction,
        int timesDried,
        Crystals crystals,
        Beginning beginning,
        Optional<Stay> stay) {
    /**
     * The crystals at the end.
     *
     * @param said the screen's last word; empty where it said none
     * @param seedFraction stable ones that there really were, kg per kg of fat; empty where the kitchen has none of its own
     * @param lostAfter when the screen said that heat had cost the seed, from the start
     */
    public record Crystals(Optional<String> said, OptionalDouble seedFraction, Optional<Duration> lostAfter) {
        /** Nothing was said of them. */
        public static final Crystals UNSAID = new Crystals(Optional.empty(), OptionalDouble.empty(), Optional.empty());

        public Crystals {
            Objects.requireNonNull(said, "said");
            Objects.requireNonNull(seedFraction, "seedFraction");
            Objects.requireNonNull(lostAfter, "lostAfter");
        }
    }

    /**
     * A planned hold as it really was.
     *
     * @param plan what was planned
     * @param held from when the screen said that the range was reached
     * @param inRange how much of that the bulk was in the working range
     */
    public record Stay(Holding plan, Duration held, Duration inRange) {
        public Stay {
            Objects.requireNonNull(plan, "plan");
            Require.notNegative(held, "held");
            Require.notNegative(inRange, "inRange");
        }
    }

    public Debrief {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(ending, "ending");
        shownCelsius = List.copyOf(shownCelsius);
        answers = List.copyOf(answers);
        Require.notNegative(underFor, "underFor");
        Require.within(meltOuts, 0, 100_000, "meltOuts");
        Require.within(stirredFraction, 0, 1, "stirredFraction");
        Require.within(timesDried, 0, 100_000, "timesDried");
        Objects.requireNonNull(crystals, "crystals");
        Objects.requireNonNull(beginning, "beginning");
        Objects.requireNonNull(stay, "stay");
    }
}
