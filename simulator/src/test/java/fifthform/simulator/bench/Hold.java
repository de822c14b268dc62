package fifthform.simulator.bench;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.setup.Setup;
import fifthform.simulator.maker.Habits;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An hour in the working range, in a kitchen of which the engine was told nothing, by the same maker with its advice and
 * alone. Both come up to the range with the engine; from <i>in range</i> on one is left to the thermometer.
 *
 * @param inRangeFraction share of the hour in which the bulk, as this probe would read it without lag, was in the range
 * @param overFraction share above it
 * @param touches stays over the bath
 */
record Hold(double inRangeFraction, double overFraction, int touches) {
    private static final Duration HOUR = Duration.ofMinutes(60);

    /** Who decides when to warm it. */
    enum Hands {
        ADVISED,
        ALONE
    }

    /** Empty where the range was never said to be reached. */
    static Optional<Hold> of(Fleet fleet, long number, Hands hands) {
        return of(fleet, number, hands, Warmth.BATH);
    }

    /** The same held by this; a box is first set with little care, 29 to 33 °C. */
    static Optional<Hold> of(Fleet fleet, long number, Hands hands, Warmth warmth) {
        Scenario scenario = held(fleet.draw(number), warmth, 29 + number % 5);
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
                Optional.of(new Holding(HOUR, warmth)));
        Program program = new EngineProgram(setup, Engine.start(setup, BatchRun.BEGINS));
        Luck luck = new Luck(fleet.seed()).branch(number).branch(1);
        Batch batch = new Batch(scenario.kitchen());
        Optional<Moment> reached = reached(batch, Batch.beginning(scenario, luck, program));
        CelsiusRange work = recipe.work().range();
        return reached.map(from -> hold(
                batch, hands == Hands.ALONE ? from.advisedBy(new Thermometer(work, warmth)) : from, scenario, work));
    }

    private static Scenario held(Scenario drawn, Warmth warmth, double boxCelsius) {
        Habits usual = drawn.habits();
        Habits habits = new Habits(
                usual.reaction(),
                usual.reactionSpread(),
                usual.meltedCelsius(),
                usual.coolCelsius(),
                usual.hold(),
                usual.warmCelsius(),
                usual.pouring(),
                usual.plan().holding(new Holding(HOUR, warmth), boxCelsius));
        return new Scenario(
                drawn.id(),
                drawn.title(),
                drawn.about(),
                drawn.demo(),
                drawn.chocolate(),
                drawn.seed(),
                drawn.kitchen(),
                drawn.begins(),
                drawn.maker(),
                habits,
                drawn.bowlAdapter(),
                drawn.expected());
    }

    private static Optional<Moment> reached(Batch batch, Moment first) {
        Moment moment = first;
        while (!moment.maker().done()) {
            Batch.Passed passed = batch.next(moment);
            moment = passed.after();
            boolean inRange = passed.events().stream()
                    .anyMatch(e -> e instanceof CueGiven given && given.cue() == CueId.IN_RANGE);
            if (inRange) return Optional.of(moment);
        }
        return Optional.empty();
    }

    private static Hold hold(Batch batch, Moment from, Scenario scenario, CelsiusRange work) {
        Moment moment = from;
        Instant end = from.at().plus(HOUR);
        int steps = 0;
        int inside = 0;
        int over = 0;
        int touches = 0;
        while (moment.at().isBefore(end)) {
            boolean was = isOverBath(moment);
            moment = batch.next(moment).after();
            if (!was && isOverBath(moment)) touches++;
            double bulk = scenario.bowlAdapter().gain() * moment.kitchen().bulkCelsius()
                    + scenario.bowlAdapter().offsetKelvin();
            steps++;
            if (work.contains(bulk)) inside++;
            if (bulk > work.highCelsius()) over++;
        }
        return new Hold((double) inside / steps, (double) over / steps, touches);
    }

    private static boolean isOverBath(Moment moment) {
        return moment.hands().spot() == fifthform.simulator.bowl.Spot.WARM_BATH;
    }

    /**
     * What a maker does alone, said to the same hands: back over the bath for some seconds when the number falls below the
     * range, fewer after it went over, more after it did little. A box is turned by a
     * kelvin where a look every ten minutes finds it outside. Invented: common practice, no source.
     */
    private static final class Thermometer implements Program {
        private static final double FIRST_SECONDS = 8;
        private static final Duration LOOKS = Duration.ofSeconds(75);

        private static final Duration BOX_LOOKS = Duration.ofMinutes(10);

        private final CelsiusRange work;
        private final Warmth warmth;
        private final double seconds;
        private final Instant touchedAt;
        private final double highestCelsius;

        Thermometer(CelsiusRange work, Warmth warmth) {
            this(work, warmth, FIRST_SECONDS, Instant.MIN, Double.NaN);
        }

        private Thermometer(
                CelsiusRange work, Warmth warmth, double seconds, Instant touchedAt, double highestCelsius) {
            this.work = work;
            this.warmth = warmth;
            this.seconds = seconds;
            this.touchedAt = touchedAt;
            this.highestCelsius = highestCelsius;
        }

        @Override
        public Heard hear(Input input) {
            if (!(input instanceof Sample sample) || !sample.probe().equals(BatchRun.BOWL)) {
                return new Heard(this, List.of());
            }
            double shown = sample.tipCelsius();
            if (warmth == Warmth.BOX) return turned(sample.at(), shown);
            boolean looks = sample.at().isBefore(touchedAt.equals(Instant.MIN) ? Instant.MIN : touchedAt.plus(LOOKS));
            if (looks || shown >= work.lowCelsius()) {
                double highest = shown > highestCelsius || Double.isNaN(highestCelsius) ? shown : highestCelsius;
                return new Heard(new Thermometer(work, warmth, seconds, touchedAt, highest), List.of());
            }
            double next = next();
            CueGiven touch = new CueGiven(
                    sample.at(),
                    warmth == Warmth.AIR ? CueId.TOUCH_OF_WARM_AIR : CueId.PUT_BACK,
                    OptionalDouble.of(next));
            return new Heard(new Thermometer(work, warmth, next, sample.at(), shown), List.of(touch));
        }

        private Heard turned(Instant at, double shown) {
            boolean waits = !touchedAt.equals(Instant.MIN) && at.isBefore(touchedAt.plus(BOX_LOOKS));
            if (waits || work.contains(shown)) return new Heard(this, List.of());
            CueId turn = shown < work.lowCelsius() ? CueId.BOX_WARMER : CueId.BOX_COOLER;
            CueGiven said = new CueGiven(at, turn, OptionalDouble.of(1));
            return new Heard(new Thermometer(work, warmth, seconds, at, shown), List.of(said));
        }

        private double next() {
            if (touchedAt.equals(Instant.MIN)) return seconds;
            if (highestCelsius > work.highCelsius()) return Math.max(1, seconds / 2);
            return highestCelsius < work.midCelsius() ? Math.min(60, 1.5 * seconds) : seconds;
        }

        @Override
        public OptionalDouble turnIfLiftedCelsius() {
            return OptionalDouble.empty();
        }
    }
}
