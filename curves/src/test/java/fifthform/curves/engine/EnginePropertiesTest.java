package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.input.Tick;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold whatever comes in. */
class EnginePropertiesTest {
    private static final Setup SETUP = TestRecipes.setup();
    private static final Instant START = StoryMaker.START;

    static LongStream seeds() {
        return LongStream.range(0, 5);
    }

    /** Two thousand inputs of every kind a seed, in an order no kitchen has: 10 000 in all. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anyInputInAnyOrderIsTaken(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        RandomInputs inputs = new RandomInputs(random);
        State state = Engine.start(SETUP, START);
        for (int i = 1; i <= 2000; i++) {
            Input input = inputs.next();
            Step step = Engine.step(SETUP, state, input);
            holds(state, input, step, i);
            state = step.after();
        }
        assertTrue(state.estimate().isPresent());
    }

    private static void holds(State before, Input input, Step step, int count) {
        State after = step.after();
        assertEquals(count, after.inputs());
        assertFalse(after.at().isBefore(before.at()), "time goes back at " + count);
        assertFalse(after.at().isBefore(input.at()));
        step.events().forEach(e -> assertEquals(after.at(), e.at()));
        assertEquals(step.events().size(), step.events().stream().distinct().count(), "said twice: " + step.events());
        after.forecast().ifPresent(f -> {
            assertTrue(f.ifLifted().lowerCelsius() <= f.ifLifted().upperCelsius());
            assertTrue(Math.abs(f.ifLeft().celsius()) < 1e4, "forecast " + f.ifLeft());
            assertTrue(after.estimate().orElseThrow().isUsable());
        });
        for (AlarmId id : AlarmId.values()) {
            boolean wasNew = before.alarms().of(id).state().isNew();
            boolean isNew = after.alarms().of(id).state().isNew();
            boolean raised = step.events().stream().anyMatch(e -> e instanceof Event.AlarmRaised r && r.alarm() == id);
            assertTrue(!isNew || wasNew || raised, id + " is new and nobody was told");
            assertTrue(!raised || isNew, id + " was raised and is not new");
        }
    }

    private static final class RandomInputs {
        private final SplittableRandom random;
        private Instant at = START;
        private double celsius = 30;
        private long count;

        RandomInputs(SplittableRandom random) {
            this.random = random;
        }

        Input next() {
            count++;
            at = at.plusMillis(random.nextInt(20) == 0 ? random.nextLong(-5000, 300_000) : random.nextLong(0, 1200));
            celsius = Math.max(-20, Math.min(150, celsius + random.nextDouble(-0.5, 0.5)));
            return switch (random.nextInt(30)) {
                case 0 -> new ProbeFault(at, probe(), any(ProbeFault.Cause.values()));
                case 1 -> new Tick(at);
                case 2 -> new StoreTrouble(at, any(StoreTrouble.What.values()));
                case 3 -> new MakerAction.BowlMoved(at, any(Place.values()));
                case 4 -> new MakerAction.PhaseConfirmed(at, any(Phase.values()));
                case 5 -> new MakerAction.AlarmAcknowledged(at, any(AlarmId.values()));
                case 6 ->
                    new MakerAction.AlarmShelved(at, any(AlarmId.values()), Duration.ofSeconds(random.nextInt(900)));
                case 7 -> rarer();
                case 8 -> reading(random.nextDouble(-20, 150));
                default -> reading(celsius);
            };
        }

        private Input rarer() {
            return switch (random.nextInt(9)) {
                case 0 -> new MakerAction.SeedAdded(at, random.nextDouble(0, 500));
                case 1 -> new MakerAction.SampleProved(at, any(SampleProved.Verdict.values()));
                case 2 -> new StirringSaid(at, any(StirringSaid.Stirring.values()));
                case 3 -> new MakerAction.Noted(at, "a word");
                case 4 -> new MakerAction.ProbeTakenOut(at);
                case 5 -> new MakerAction.ProbePutBack(at);
                case 6 -> new MakerAction.OtherThermometer(at, celsius);
                case 7 -> new MakerAction.SetupChanged(at, SETUP);
                default -> new MakerAction.Undone(at, Math.max(0, count - random.nextInt(1, 4)));
            };
        }

        private Sample reading(double read) {
            OptionalDouble junction =
                    random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(random.nextDouble(-30, 80));
            return new Sample(at, probe(), read, random.nextDouble(0.001, 1), junction, OptionalDouble.empty());
        }

        private ProbeId probe() {
            return random.nextInt(10) == 0 ? new ProbeId("stranger") : StoryKitchen.BOWL;
        }

        private <T> T any(T[] values) {
            return values[random.nextInt(values.length)];
        }
    }

    @Test
    void theSameInputsLeadToTheSameStatesAndEvents() {
        StoryMaker maker = StoryMaker.melting(200, 0.2, Keys.PRESSED);
        maker.obeysUntil(s -> s.batch().phase() == Phase.WORK, Duration.ofHours(1));
        State state = Engine.start(maker.setup, START);
        List<Event> again = new ArrayList<>();
        for (Input input : maker.inputs) {
            Step step = Engine.step(maker.setup, state, input);
            again.addAll(step.events());
            state = step.after();
        }
        assertEquals(maker.state, state);
        assertEquals(maker.events, again);
    }

    @Test
    void twoReadingsAtTheSameInstantAreHarmless() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.moves(Place.TABLE);
        int before = maker.raised().size();
        maker.watches(Duration.ofMinutes(3), sample -> {
            maker.feeds(sample);
            maker.feeds(sample);
        });
        assertEquals(
                maker.kitchen.chocolateCelsius(),
                maker.state.estimate().orElseThrow().chocolateCelsius(),
                0.15);
        assertEquals(before, maker.raised().size(), maker.raised().toString());
    }

    /** A reading stamped before the last one counts as of the moment the engine learns of it. */
    @Test
    void aReadingFromThePastIsHarmless() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.moves(Place.TABLE);
        int before = maker.raised().size();
        maker.watches(Duration.ofMinutes(3), sample -> {
            maker.feeds(sample);
            boolean stray = sample.at().toEpochMilli() % 10_000 == 0;
            if (stray) maker.feeds(StoryKitchen.reading(sample.at().minusSeconds(5), sample.tipCelsius()));
        });
        assertEquals(
                maker.kitchen.chocolateCelsius(),
                maker.state.estimate().orElseThrow().chocolateCelsius(),
                0.15);
        assertEquals(before, maker.raised().size(), maker.raised().toString());
    }
}
