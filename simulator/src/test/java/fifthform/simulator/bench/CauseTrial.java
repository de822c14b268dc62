package fifthform.simulator.bench;

import fifthform.curves.check.Problem;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.review.Cause;
import fifthform.curves.review.Cause.Kind;
import fifthform.curves.review.Causes;
import fifthform.curves.setup.Setup;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.device.Truth;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.ScenarioText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * One simulated batch and what is said to have gone wrong in it, beside how it really was on the scale of its own probe.
 *
 * @param causes what the engine's steps said
 * @param recipe the chocolate
 * @param meltedCelsius the hottest of the melt
 * @param coolestCelsius the coldest before the first warm bath
 * @param hottestCelsius the hottest from there on
 * @param seedAtRewarm true stable seed of the bowl at the first warm bath, kg for each kg of fat
 * @param seedAtEnd the same in the end
 * @param probeOutSeconds how long the maker said that the probe was out, at once, in the cool step or later
 */
record CauseTrial(
        Causes causes,
        Recipe recipe,
        double meltedCelsius,
        double coolestCelsius,
        double hottestCelsius,
        double seedAtRewarm,
        double seedAtEnd,
        double probeOutSeconds) {
    /** Less stable seed is no temper; more is thick. As the reference has them. */
    private static final double LEAST_SEED = 0.005;

    private static final double THICK_SEED = 0.06;

    /** A fault that is put into a batch of a maker who otherwise follows the cues. */
    enum Fault {
        LATE(
                EnumSet.of(Kind.LIFTED_LATE, Kind.BATH_TOO_HOT),
                "lift = one",
                "warm bath = 58 C",
                "interrupted = phone for 60 s, 0 s after lift-now") {
            @Override
            boolean shows(CauseTrial t) {
                return t.isOver();
            }
        },
        DEEP(EnumSet.of(Kind.COOLED_TOO_DEEP), "interrupted = phone for 240 s, 0 s after stop-cooling") {
            @Override
            boolean shows(CauseTrial t) {
                return t.coolestCelsius < t.tooDeepCelsius() - 0.2;
            }
        },
        WARM(
                EnumSet.of(Kind.COOLED_TOO_LITTLE, Kind.HELD_TOO_SHORT),
                "maker = own-way",
                "cool at = 30 C",
                "hold = 1 min") {
            @Override
            boolean shows(CauseTrial t) {
                return t.seedAtRewarm < LEAST_SEED && t.seedAtEnd < LEAST_SEED;
            }
        },
        HOT(EnumSet.of(Kind.LIFTED_LATE, Kind.BATH_TOO_HOT), "maker = own-way", "hold = 8 min", "warm at = 32.3 C") {
            @Override
            boolean shows(CauseTrial t) {
                return t.isOver() && t.coolestCelsius >= t.tooDeepCelsius() + 0.1;
            }
        },
        WIRE(EnumSet.of(Kind.PROBE_FAULTY), "fault = open-circuit for 40 s, 30 s after table"),
        PLUG(EnumSet.of(Kind.READINGS_MISSING), "fault = unplugged for 25 s, 60 s after cold-water"),
        OUT(EnumSet.of(Kind.PROBE_OUT), "pour = 10 min", "interrupted = probe-out for 240 s, 60 s after in-range") {
            @Override
            boolean shows(CauseTrial t) {
                return t.probeOutSeconds > 190;
            }
        },
        MILD_MELT(EnumSet.of(Kind.MELTED_TOO_COOL), "maker = own-way", "melted at = 39 C", "hold = 8 min") {
            @Override
            boolean shows(CauseTrial t) {
                return t.meltedCelsius < t.recipe.melt().range().lowCelsius() - 2.2;
            }
        };

        private final Set<Kind> right;
        private final List<String> lines;

        Fault(Set<Kind> right, String... lines) {
            this.right = right;
            this.lines = List.of(lines);
        }

        /** What may be named first. */
        Set<Kind> right() {
            return right;
        }

        /** Whether the fault did what it was meant to. */
        boolean shows(CauseTrial trial) {
            return true;
        }
    }

    /** A batch of this fleet in the hands of somebody who follows the cues. */
    static CauseTrial followed(Fleet fleet, long number) {
        return of(fleet, number, List.of(), "followed");
    }

    /** A batch of this fleet in the hands of somebody who follows the cues, with a fault put in. */
    static CauseTrial of(Fleet fleet, long number, Fault fault) {
        return of(fleet, number, fault.lines, fault.name());
    }

    private static CauseTrial of(Fleet fleet, long number, List<String> with, String what) {
        return of(scenario(fleet, number, with, what), number);
    }

    /** A batch of this fleet in the hands of somebody who follows the cues, with these lines in place of its own. */
    static Scenario scenario(Fleet fleet, long number, List<String> with, String what) {
        List<String> lines = new ArrayList<>();
        for (String line : fleet.text(number).split("\n")) {
            String key = line.substring(0, Math.max(0, line.indexOf('='))).strip();
            boolean replaced = with.stream()
                    .anyMatch(l -> l.substring(0, l.indexOf('=')).strip().equals(key));
            if (!replaced && !key.equals("maker")) lines.add(line);
        }
        if (with.stream().noneMatch(l -> l.startsWith("maker"))) lines.add("maker = follows-cues");
        lines.addAll(with);
        String name = fleet.id() + "-" + number + "-" + what;
        return ScenarioText.parse(name, String.join("\n", lines)).fold(s -> s, problems -> {
            throw new IllegalStateException(
                    name + ": " + problems.stream().map(Problem::toString).toList());
        });
    }

    /** A whole batch through its adapter's bytes. */
    static CauseTrial of(Scenario scenario, long seed) {
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Watching program = new Watching(EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS));
        BatchRecord batch = BatchRun.run(scenario, seed, program, Presses.PRESSED);
        double melted = Double.NEGATIVE_INFINITY;
        double coolest = Double.POSITIVE_INFINITY;
        double hottest = Double.NEGATIVE_INFINITY;
        double seedAtRewarm = 0;
        boolean rewarmed = false;
        boolean cooled = false;
        double gain = scenario.bowlAdapter().gain();
        double offset = scenario.bowlAdapter().offsetKelvin();
        for (Truth truth : batch.truth()) {
            double celsius = gain * truth.bulkCelsius() + offset;
            cooled |= truth.spot() == Spot.COLD_WATER;
            if (!rewarmed && truth.spot() == Spot.WARM_BATH) {
                rewarmed = true;
                seedAtRewarm = truth.forms().orElseThrow().stableFraction();
            }
            if (!cooled) melted = Math.max(melted, celsius);
            if (cooled && !rewarmed) coolest = Math.min(coolest, celsius);
            if (rewarmed) hottest = Math.max(hottest, celsius);
        }
        Truth last = batch.truth().get(batch.truth().size() - 1);
        return new CauseTrial(
                program.causes,
                recipe,
                melted,
                coolest,
                hottest,
                seedAtRewarm,
                last.forms().orElseThrow().stableFraction(),
                probeOutSeconds(batch));
    }

    private static double probeOutSeconds(BatchRecord batch) {
        Instant since = null;
        double longest = 0;
        Instant end = batch.inputs().get(batch.inputs().size() - 1).at();
        for (Input input : batch.inputs()) {
            if (input instanceof ProbeTakenOut) since = input.at();
            if (input instanceof ProbePutBack && since != null) {
                longest = Math.max(longest, Duration.between(since, input.at()).toSeconds());
                since = null;
            }
        }
        return since == null
                ? longest
                : Math.max(longest, Duration.between(since, end).toSeconds());
    }

    private boolean isOver() {
        return hottestCelsius > recipe.meltOut().warnCelsius() + 0.1;
    }

    private double tooDeepCelsius() {
        return recipe.cool().range().lowCelsius() - 1;
    }

    /** Whether the melt, in which most kitchens are alike, was as it should be. */
    boolean isMelted() {
        return meltedCelsius >= recipe.melt().range().lowCelsius() - 1.5;
    }

    /** Whether nothing at all was wrong with it. */
    boolean isSound() {
        return isMelted()
                && coolestCelsius <= recipe.cool().range().highCelsius() + 0.5
                && coolestCelsius >= tooDeepCelsius()
                && hottestCelsius >= recipe.work().range().lowCelsius()
                && hottestCelsius <= recipe.work().range().highCelsius() + 0.2
                && seedAtRewarm >= LEAST_SEED
                && seedAtEnd >= LEAST_SEED
                && seedAtEnd <= THICK_SEED;
    }

    List<Kind> faults() {
        return causes.faults().stream().map(Cause::kind).toList();
    }

    private static final class Watching implements Function<Input, List<Event>> {
        private final Setup setup;
        private State state;
        private Causes causes;

        Watching(EngineProgram program) {
            setup = program.setup();
            state = program.state();
            causes = Causes.start(setup, state);
        }

        @Override
        public List<Event> apply(Input input) {
            Step step = Engine.step(setup, state, input);
            causes = causes.with(step.after().setupInForce(setup), state, input, step);
            state = step.after();
            return step.events();
        }
    }
}
