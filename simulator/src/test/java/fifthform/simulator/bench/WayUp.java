package fifthform.simulator.bench;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Setup;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How an obeying maker comes up to the working range, in a kitchen of which the engine knows nothing: no bath probe, no
 * amount, no material. Judged from the first warm bath to <i>in range</i>, or to the end of a quarter of an hour.
 *
 * @param readCelsius highest mean of four seconds' readings, °C
 * @param trueCelsius highest temperature of the bulk, as this probe would read it without lag, °C
 * @param took from the first warm bath to the reading's highest point
 * @param dips stays over the bath
 * @param falseLifts times {@code lift-now} or {@code off-now} was said to a bowl that was off the bath
 * @param range the working range
 */
record WayUp(double readCelsius, double trueCelsius, Duration took, int dips, int falseLifts, CelsiusRange range) {
    private static final Duration LONGEST = Duration.ofMinutes(20);
    private static final int MEAN_STEPS = 8;

    /** Whether the maker's keys reach the engine. */
    enum Keys {
        PRESSED,
        SILENT
    }

    /** The engine, hearing keys or not. */
    private record Listening(EngineProgram program, Keys keys) implements Program {
        @Override
        public Heard hear(Input input) {
            if (keys == Keys.SILENT && input instanceof BowlMoved) return new Heard(this, List.of());
            Heard heard = program.hear(input);
            return new Heard(new Listening((EngineProgram) heard.after(), keys), heard.events());
        }

        @Override
        public OptionalDouble turnIfLiftedCelsius() {
            return program.turnIfLiftedCelsius();
        }
    }

    static WayUp of(Fleet fleet, long number, Approach approach, Keys keys) {
        Scenario scenario = fleet.draw(number);
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Setup told = EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS).setup();
        Setup setup = new Setup(
                        recipe,
                        Bowl.ANY,
                        List.of(told.bowlProbe()),
                        Setup.USUAL_REACTION,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        told.origin(),
                        told.approach(),
                        told.seedGrams(),
                        Beginning.WHOLE,
                        Optional.empty())
                .withApproach(approach);
        Program program = new Listening(new EngineProgram(setup, Engine.start(setup, BatchRun.BEGINS)), keys);
        Luck luck = new Luck(fleet.seed()).branch(number).branch(1);
        return follow(new Batch(scenario.kitchen()), Batch.beginning(scenario, luck, program), scenario, recipe);
    }

    private static WayUp follow(Batch batch, Moment first, Scenario scenario, Recipe recipe) {
        Moment moment = first;
        Optional<Instant> began = Optional.empty();
        Deque<Double> last = new ArrayDeque<>();
        double read = Double.NEGATIVE_INFINITY;
        double real = Double.NEGATIVE_INFINITY;
        Instant at = first.at();
        int dips = 0;
        int falseLifts = 0;
        boolean inRange = false;
        Spot spot = Spot.TABLE;
        while (!moment.maker().done() && !inRange) {
            Batch.Passed passed = batch.next(moment);
            moment = passed.after();
            Spot now = moment.hands().spot();
            if (now == Spot.WARM_BATH && spot != now) {
                dips++;
                if (began.isEmpty()) began = Optional.of(moment.at());
            }
            for (var event : passed.events()) {
                if (!(event instanceof CueGiven given)) continue;
                inRange |= given.cue() == CueId.IN_RANGE && began.isPresent();
                boolean off = given.cue() == CueId.LIFT_NOW || given.cue() == CueId.OFF_NOW;
                if (off && now != Spot.WARM_BATH) falseLifts++;
            }
            spot = now;
            if (began.isEmpty()) continue;
            if (Duration.between(began.get(), moment.at()).compareTo(LONGEST) > 0) break;
            last.addLast(moment.shownCelsius().orElseThrow());
            if (last.size() > MEAN_STEPS) last.removeFirst();
            double mean = last.stream().mapToDouble(d -> d).average().orElseThrow();
            if (mean > read) {
                read = mean;
                at = moment.at();
            }
            double bulk = moment.kitchen().bulkCelsius();
            real = Math.max(
                    real,
                    scenario.bowlAdapter().gain() * bulk
                            + scenario.bowlAdapter().offsetKelvin());
        }
        Duration took = began.map(b -> b).isPresent() ? Duration.between(began.get(), at) : Duration.ZERO;
        return new WayUp(read, real, took, dips, falseLifts, recipe.work().range());
    }

    boolean over(double celsius, double byKelvin) {
        return celsius > range.highCelsius() + byKelvin;
    }

    boolean isShort(double celsius) {
        return celsius < range.lowCelsius();
    }
}
