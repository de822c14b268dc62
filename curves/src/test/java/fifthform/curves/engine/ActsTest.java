package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SetupChanged;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.Sample;
import fifthform.curves.input.StoreTrouble;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.MeltOut;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.PhaseTarget;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.curves.situation.ProbePlace;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the maker does and says, and how it is taken back. */
class ActsTest {
    private static final Instant LATER = StoryMaker.START.plus(Duration.ofMinutes(3));

    /** Chocolate with two kelvin less of everything, as milk has. */
    private static Setup milder() {
        Recipe dark = TestRecipes.dark();
        return TestRecipes.setup()
                .withRecipe(new Recipe(
                        "story-mild",
                        "Story mild (demo)",
                        dark.composition(),
                        new PhaseTarget(new CelsiusRange(40, 45), Duration.ofMinutes(5)),
                        new PhaseTarget(new CelsiusRange(25, 26), Duration.ofMinutes(6)),
                        new PhaseTarget(new CelsiusRange(29, 30), Duration.ZERO),
                        new MeltOut(30.5, 31.8),
                        48,
                        40,
                        "invented for tests",
                        List.of()));
    }

    static Stream<MakerAction> undoable() {
        return Stream.of(
                new BowlMoved(LATER, Place.TABLE),
                new PhaseConfirmed(LATER, Phase.SEED),
                new ProbeTakenOut(LATER),
                new SetupChanged(LATER, milder()));
    }

    @ParameterizedTest
    @MethodSource("undoable")
    void anActIsTakenBackWholeAndOnce(MakerAction act) {
        StoryMaker maker = StoryMaker.melting(200, 0.2, Keys.SILENT);
        maker.watches(Duration.ofMinutes(3));
        State before = maker.state;
        maker.feeds(act);
        long sequence = maker.state.inputs();
        assertFalse(same(before, maker.state), "the act must change something");
        assertEquals(sequence, maker.state.undoable().orElseThrow().sequence());

        maker.feeds(new Undone(LATER.plusSeconds(1), sequence));
        assertTrue(same(before, maker.state));
        assertTrue(maker.state.undoable().isEmpty());
        State once = maker.state;
        maker.feeds(new Undone(LATER.plusSeconds(2), sequence));
        assertTrue(same(once, maker.state));
    }

    private static boolean same(State a, State b) {
        return a.batch().equals(b.batch())
                && a.probe() == b.probe()
                && a.setupInForce(TestRecipes.setup()).equals(b.setupInForce(TestRecipes.setup()));
    }

    @Test
    void onlyTheLatestActIsTakenBack() {
        StoryMaker maker = StoryMaker.melting(200, 0.2, Keys.SILENT);
        maker.watches(Duration.ofMinutes(1));
        maker.feeds(new BowlMoved(LATER, Place.TABLE));
        long first = maker.state.inputs();
        maker.feeds(new BowlMoved(LATER, Place.COLD_WATER));
        maker.feeds(new Undone(LATER, first));
        assertEquals(Place.COLD_WATER, maker.state.batch().place());
    }

    /** A slip of the finger during the coast: the bowl never left the table, and its turning point is still seen. */
    @Test
    void aMoveTakenBackIsNoLift() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.PRESSED);
        maker.watchesUntil(29);
        maker.moves(Place.TABLE);
        maker.watches(Duration.ofSeconds(10));
        State before = maker.state;
        maker.feeds(new BowlMoved(maker.kitchen.at(), Place.BATH));
        maker.watches(Duration.ofSeconds(2));
        maker.feeds(new Undone(
                maker.kitchen.at(), maker.state.undoable().orElseThrow().sequence()));
        assertTrue(same(before, maker.state));
        assertEquals(
                before.coasting().lift().orElseThrow().at(),
                maker.state.coasting().lift().orElseThrow().at());
        maker.watches(Duration.ofMinutes(3));
        assertTrue(maker.state.coasting().lastTurn().orElseThrow().celsius() > 29);
    }

    @Test
    void whileTheProbeIsOutOnPurposeItsReadingsSayNothing() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.SILENT);
        maker.moves(Place.TABLE);
        maker.watches(Duration.ofMinutes(3));
        int before = maker.raised().size();
        Phase phase = maker.state.batch().phase();
        maker.feeds(new ProbeTakenOut(maker.kitchen.at()));
        assertEquals(ProbePlace.OUT, maker.state.probe());
        for (int i = 0; i < 240; i++) {
            Sample washed = maker.kitchen.read();
            maker.feeds(StoryKitchen.reading(washed.at(), i < 120 ? 50 : 22));
        }
        assertTrue(maker.state.forecast().isEmpty());
        assertEquals(phase, maker.state.batch().phase());
        assertEquals(before, maker.raised().size(), maker.raised().toString());

        maker.feeds(new ProbePutBack(maker.kitchen.at()));
        maker.watches(Duration.ofSeconds(30));
        assertTrue(maker.state.forecast().isPresent());
        assertEquals(
                maker.kitchen.chocolateCelsius(),
                maker.state.estimate().orElseThrow().chocolateCelsius(),
                0.3);
        assertEquals(phase, maker.state.batch().phase());
    }

    @Test
    void anotherChocolateBringsItsOwnLimits() {
        StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.PRESSED);
        maker.obeysUntil(s -> s.batch().phase() == Phase.WORK, Duration.ofMinutes(20));
        assertEquals(List.of(), maker.urgent());
        maker.feeds(new SetupChanged(maker.kitchen.at(), milder()));
        maker.watches(Duration.ofSeconds(10));
        assertTrue(
                maker.urgent().stream().anyMatch(e -> e.alarm() == AlarmId.NEAR_MELT_OUT),
                "31.5 °C is near the melt-out of the mild one: " + maker.urgent());
    }

    @Test
    void aBatchIsJoinedInTheMiddle() {
        StoryKitchen kitchen = new StoryKitchen(StoryMaker.START, 27.5, 200, 0.2, 4);
        kitchen.put(Place.BATH, 45);
        StoryMaker maker = new StoryMaker(kitchen, TestRecipes.setup(), Keys.SILENT);
        maker.feeds(new PhaseConfirmed(StoryMaker.START, Phase.REWARM));
        assertEquals(Place.BATH, maker.state.batch().place());
        assertEquals(Evidence.TOLD, maker.state.batch().progress().evidence());
        maker.obeysUntil(s -> s.batch().phase() == Phase.WORK, Duration.ofMinutes(20));
        assertEquals(List.of(Phase.REWARM, Phase.WORK), maker.phases());
        assertTrue(maker.highestAfterSeed > 30.9 && maker.highestAfterSeed < 32.1, "peak " + maker.highestAfterSeed);
    }

    @Test
    void theJournalsTroubleIsAnAlarmUntilItWritesAgain() {
        StoryMaker maker = StoryMaker.melting(200, 0.2, Keys.SILENT);
        maker.watches(Duration.ofSeconds(5));
        maker.feeds(new StoreTrouble(maker.kitchen.at(), StoreTrouble.What.CANNOT_WRITE));
        assertEquals(AlarmId.NOT_RECORDING, maker.raised().get(0).alarm());
        maker.feeds(new MakerAction.AlarmAcknowledged(maker.kitchen.at(), AlarmId.NOT_RECORDING));
        maker.feeds(new StoreTrouble(maker.kitchen.at(), StoreTrouble.What.WRITES_AGAIN));
        maker.watches(Duration.ofSeconds(6));
        assertEquals(List.of(), maker.state.alarms().standing());
    }
}
