package fifthform.simulator.rivals;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.BatchRun;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A {@link Rule} as a program: says "lift" when the turning point for a lift a reaction time later reaches the aim twice
 * running, once for each time that the bowl has come from below the range.
 *
 * @param rule where it turns
 * @param recipe what is aimed at
 * @param aboveMiddleKelvin the aim, above the middle of the working range, K
 * @param gate whether a lift can be due
 */
record RuleAtWork(Rule rule, Recipe recipe, double aboveMiddleKelvin, Gate gate) implements Rival {
    /** The middle of what the judges take; the rules know it. */
    private static final double REACTION_SECONDS = 2.5;

    private static final double BELOW_KELVIN = 0.5;
    private static final double MELTED_ABOVE_KELVIN = 8;

    /** Whether a lift can be due. */
    enum Gate {
        /** Not melted yet. */
        BEFORE_THE_MELT,
        /** Melted, not below the working range since. */
        MELTED,
        /** Has been below the working range. */
        BELOW,
        /** Reached once. */
        REACHED,
        /** Said. */
        SAID
    }

    RuleAtWork {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(gate, "gate");
    }

    @Override
    public Heard hear(Input input) {
        if (!(input instanceof Sample sample) || !sample.probe().equals(BatchRun.BOWL)) return Rival.silent(this);
        double seconds = Duration.between(BatchRun.BEGINS, sample.at()).toMillis() / 1000.0;
        Rule next = rule.after(seconds, sample.tipCelsius());
        Gate opened = opened(sample.tipCelsius());
        boolean reached = next.turnCelsius() + REACTION_SECONDS * Math.max(0, next.kelvinPerSecond())
                        >= recipe.work().range().midCelsius() + aboveMiddleKelvin
                && next.kelvinPerSecond() > 0;
        if (opened == Gate.REACHED && reached) {
            RuleAtWork said = new RuleAtWork(next, recipe, aboveMiddleKelvin, Gate.SAID);
            Event lift = new CueGiven(sample.at(), CueId.LIFT_NOW, OptionalDouble.of(next.turnCelsius()));
            return new Heard(said, List.of(lift));
        }
        if (opened == Gate.BELOW && reached) opened = Gate.REACHED;
        else if (opened == Gate.REACHED) opened = Gate.BELOW;
        return Rival.silent(new RuleAtWork(next, recipe, aboveMiddleKelvin, opened));
    }

    private Gate opened(double celsius) {
        double low = recipe.work().range().lowCelsius();
        return switch (gate) {
            case BEFORE_THE_MELT -> celsius > low + MELTED_ABOVE_KELVIN ? Gate.MELTED : gate;
            case MELTED, SAID -> celsius < low - BELOW_KELVIN ? Gate.BELOW : gate;
            case BELOW, REACHED -> gate;
        };
    }

    @Override
    public Optional<Said> said() {
        double turn = rule.turnCelsius();
        return Double.isNaN(turn) ? Optional.empty() : Optional.of(Said.at(turn));
    }
}
