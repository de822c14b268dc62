package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.AlarmBank;
import fifthform.curves.alarm.Priority;
import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueBoard;
import fifthform.curves.cue.CueId;
import fifthform.curves.cue.Dip;
import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.AlarmAcknowledged;
import fifthform.curves.input.MakerAction.AlarmShelved;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Noted;
import fifthform.curves.input.MakerAction.OtherThermometer;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.SetupChanged;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.session.Altered;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeyDeskTest {
    private static final Instant NOW = Instant.parse("2026-02-03T15:00:00Z");

    private final AtomicReference<Instant> hands = new AtomicReference<>(NOW);
    private final AtomicReference<SessionSnapshot> session = new AtomicReference<>(Tapes.start(Tapes.UNPLUGGED));
    private final List<Input> inputs = new ArrayList<>();
    private final AtomicInteger faster = new AtomicInteger();
    private final List<String> grip = new ArrayList<>();
    private final AtomicInteger stops = new AtomicInteger();
    private final List<Recipe> recipes = Recipes.load(Path.of("none")).known().stream()
            .map(KnownRecipe::recipe)
            .toList();
    private final KeyDesk desk = new KeyDesk(
            session::get,
            inputs::add,
            () -> NOW,
            hands::get,
            recipes,
            Units.CELSIUS,
            KeyMap.USUAL,
            new KeyDesk.Levers(
                    new KeyDesk.Speed() {
                        @Override
                        public void faster() {
                            faster.incrementAndGet();
                        }

                        @Override
                        public void slower() {
                            faster.decrementAndGet();
                        }
                    },
                    Optional.of(new KeyDesk.Grip() {
                        @Override
                        public boolean isReleased() {
                            return grip.size() % 2 == 1;
                        }

                        @Override
                        public void letGo() {
                            grip.add("let go");
                        }

                        @Override
                        public void takeBack() {
                            grip.add("taken back");
                        }
                    }),
                    stops::incrementAndGet,
                    Optional.empty()));

    @Test
    void thePortIsLetGoByTwoPressesAndTakenBackByOne() {
        desk.accept(Key.LET_GO);
        assertEquals(List.of(), grip);
        assertTrue(
                desk.line().orElseThrow().startsWith("Press L again"),
                () -> desk.line().toString());
        desk.accept(Key.QUIT);
        desk.accept(Key.LET_GO);
        assertEquals(List.of(), grip, "another key came between");
        assertEquals(0, stops.get());
        desk.accept(Key.LET_GO);
        assertEquals(List.of("let go"), grip);
        desk.accept(Key.LET_GO);
        assertEquals(List.of("let go", "taken back"), grip);
        assertEquals(List.of(), inputs);
    }

    /** Five minutes for one that may wait, and back by the same key; an urgent one is never set aside. */
    @Test
    void anAlarmIsSetAsideAndComesBackByTheSameKey() {
        session.set(Tapes.first(
                Tapes.OWN_WAY,
                s -> s.state().alarms().standing().size() == 1
                        && priority(s.state(), s.state().alarms().standing().get(0)) != Priority.URGENT));
        State state = session.get().state();
        AlarmId standing = state.alarms().standing().get(0);
        desk.accept(Key.SET_ASIDE);
        assertEquals(List.of(new AlarmShelved(NOW, standing, Duration.ofMinutes(5))), inputs);
        assertTrue(desk.line().orElseThrow().contains("A brings it back"), () -> desk.line() + "");
        AlarmBank aside = state.alarms().shelved(standing, Duration.ofMinutes(5), state.at());
        session.set(Altered.with(session.get(), Altered.with(state, aside)));
        inputs.clear();
        desk.accept(Key.SET_ASIDE);
        assertEquals(List.of(new AlarmShelved(NOW, standing, Duration.ZERO)), inputs);
        session.set(Tapes.first(
                Tapes.UNPLUGGED,
                s -> !s.state().alarms().standing().isEmpty()
                        && s.state().alarms().standing().stream()
                                .allMatch(id -> priority(s.state(), id) == Priority.URGENT)));
        inputs.clear();
        desk.accept(Key.SET_ASIDE);
        assertEquals(List.of(), inputs);
        assertTrue(desk.line().orElseThrow().contains("an urgent one never is"), () -> desk.line() + "");
    }

    private static Priority priority(State state, AlarmId id) {
        return state.alarms().of(id).priority();
    }

    @Test
    void theEarlierCurveComesAndGoesByItself() {
        session.set(Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().alarms().standing().isEmpty()
                        && Duration.between(s.state().started(), s.state().at()).toMinutes() == 12));
        desk.accept(Key.EARLIER);
        desk.accept(Key.EARLIER);
        desk.accept(Key.EARLIER);
        assertEquals(Duration.ofMinutes(10), desk.back().by(), "not before the batch began");
        assertTrue(
                desk.line().orElseThrow().startsWith("Looking back, 10 min ago"),
                () -> desk.line().toString());
        hands.updateAndGet(now -> now.plusSeconds(19));
        desk.accept(Key.LATER);
        assertEquals(Duration.ofMinutes(5), desk.back().by());
        hands.updateAndGet(now -> now.plusSeconds(19));
        assertTrue(desk.back().isBack());
        hands.updateAndGet(now -> now.plusSeconds(2));
        assertFalse(desk.back().isBack());
        desk.accept(Key.EARLIER);
        desk.accept(Key.NOW);
        assertFalse(desk.back().isBack());
        assertEquals(List.of(), inputs, "it is nothing of the batch");
    }

    @Test
    void anAlarmThatNobodyHasSeenEndsLookingBackAtOnce() {
        session.set(Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().alarms().standing().isEmpty()
                        && Duration.between(s.state().started(), s.state().at()).toMinutes() == 12));
        desk.accept(Key.EARLIER);
        assertTrue(desk.back().isBack());
        session.set(Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().alarms().standing().stream()
                        .map(id -> s.state().alarms().of(id))
                        .anyMatch(a -> a.state().isNew() && a.priority() != Priority.ADVISE)));
        assertFalse(desk.back().isBack());
        desk.accept(Key.EARLIER);
        assertEquals(Optional.of("An alarm stands: the curve stays at now"), desk.line());
    }

    @Test
    void aKeyThatStumblesSaysSo() {
        desk.stumbled(Key.MARK);
        assertEquals(
                Optional.of("Fault of the program at M: that key did nothing · the recording goes on"), desk.line());
    }

    @Test
    void seenAcknowledgesEveryAlarmThatStands() {
        session.set(
                Tapes.first(Tapes.OWN_WAY, s -> s.state().alarms().standing().size() >= 2));
        desk.accept(Key.SEEN);
        List<AlarmId> standing = session.get().state().alarms().standing();
        assertEquals(standing.stream().map(id -> new AlarmAcknowledged(NOW, id)).toList(), inputs);
    }

    @Test
    void stirringIsSaidByOnePressAndLeftAloneByTheNext() {
        session.set(Tapes.first(Tapes.UNPLUGGED, s -> s.state().batch().phase() == Phase.COOL));
        desk.accept(Key.STIR);
        assertEquals(List.of(new StirringSaid(NOW, StirringSaid.Stirring.STIRRED)), inputs);
        assertEquals(Optional.of("It is stirred; S again: left alone"), desk.line());
        step(inputs.get(0));
        inputs.clear();
        desk.accept(Key.STIR);
        assertEquals(List.of(new StirringSaid(NOW, StirringSaid.Stirring.STILL)), inputs);
    }

    @Test
    void whatAnotherThermometerSaysIsTypedAndKept() {
        type("31");
        assertEquals(List.of(), inputs, "digits mean nothing before O");
        desk.accept(Key.OTHER);
        type("31,9");
        assertEquals(Optional.of("Other thermometer: 31.9_ °C · Enter keeps it, Esc leaves it"), desk.line());
        type("7\b\r");
        assertEquals(List.of(new OtherThermometer(NOW, 31.9)), inputs);
        assertEquals(Optional.of("Other thermometer says 31.9 °C: kept"), desk.line());
        assertFalse(desk.typed('\r'), "the next Enter is a key again");
    }

    @Test
    void aNumberHalfTypedIsLeftByEscapeOrByTimeAndLetsTheAlarmKeyThrough() {
        desk.accept(Key.OTHER);
        type("31");
        assertFalse(desk.typed(' '), "Space is for the alarm");
        assertTrue(desk.typed((char) 27));
        assertFalse(desk.typed('4'));
        desk.accept(Key.OTHER);
        hands.set(NOW.plusSeconds(20));
        assertFalse(desk.typed('\r'), "forgotten, and Enter means the step again");
        assertEquals(List.of(), inputs);
    }

    @Test
    void whatNoKitchenHasIsNotKept() {
        desk.accept(Key.OTHER);
        type("319\r");
        assertEquals(List.of(), inputs);
        assertTrue(
                desk.line().orElseThrow().startsWith("Not kept: "), desk.line().toString());
    }

    private void type(String characters) {
        for (char character : characters.toCharArray()) desk.typed(character);
    }

    @Test
    void seenWithoutAlarmsIsNoInput() {
        desk.accept(Key.SEEN);
        assertEquals(List.of(), inputs);
    }

    @Test
    void stepDoneIsTheCueThatIsDueOrElseThePhase() {
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(new PhaseConfirmed(NOW, Phase.COOL)), inputs);
        assertEquals(Optional.of("Now: cool · U takes it back"), desk.line());
        at(CueId.LIFT_NOW);
        desk.accept(Key.STEP_DONE);
        assertEquals(new BowlMoved(NOW, Place.TABLE), inputs.get(1));
        session.set(Tapes.first(Tapes.OWN_WAY, s -> s.state().cues().isOpen(CueId.STOP_COOLING)));
        desk.accept(Key.STEP_DONE);
        assertEquals(new BowlMoved(NOW, Place.TABLE), inputs.get(2));
        session.set(Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().cues().isOpen(CueId.PUT_BACK)
                        && s.state().batch().phase() == Phase.COOL));
        desk.accept(Key.STEP_DONE);
        assertEquals(new BowlMoved(NOW, Place.COLD_WATER), inputs.get(3));
    }

    /** A filled band asks for it, so Enter will be pressed; that must not end the phase. */
    @Test
    void stepDoneAfterWipingEndsNoPhase() {
        session.set(Tapes.first(
                Tapes.UNPLUGGED, s -> s.state().cues().open().keySet().equals(java.util.Set.of(CueId.WIPE_AND_STIR))));
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(), inputs);
        assertEquals(Optional.of("Good; the curve shows the rest"), desk.line());
    }

    /** A hand is often later than the cue it answers: that must not end the way up below the range. */
    @Test
    void stepDoneWhileAShortDipGoesOnEndsNoPhase() {
        session.set(Tapes.first(Tapes.UNPLUGGED, s -> nothingDueIn(s, Dip.Stage.OVER_BATH)));
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(new BowlMoved(NOW, Place.TABLE)), inputs);
        session.set(Tapes.first(Tapes.UNPLUGGED, s -> nothingDueIn(s, Dip.Stage.LOOKING)));
        desk.accept(Key.STEP_DONE);
        assertEquals(1, inputs.size());
        assertEquals(Optional.of("Good; the curve shows the rest"), desk.line());
    }

    /** Nobody pours from below the range: the first press asks, the second is believed. */
    @Test
    void stepDoneBelowTheRangeIsAskedTwice() {
        session.set(Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().batch().phase() == Phase.REWARM
                        && s.state().cues().open().isEmpty()
                        && s.state().cues().dips().dip().isEmpty()
                        && s.state().alarms().standing().isEmpty()
                        && s.state()
                                .estimate()
                                .filter(e -> e.chocolateCelsius() < 30)
                                .isPresent()));
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(), inputs);
        assertEquals(Optional.of("Below the working range: press Enter again to end the rewarm here"), desk.line());
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(new PhaseConfirmed(NOW, Phase.WORK)), inputs);
    }

    private static boolean nothingDueIn(SessionSnapshot s, Dip.Stage stage) {
        CueBoard cues = s.state().cues();
        return cues.open().isEmpty()
                && cues.dips().dip().filter(dip -> dip.is(stage)).isPresent();
    }

    @Test
    void stepDoneThrowsThePlannedSeedIn() {
        SessionSnapshot cold = Tapes.first(
                Tapes.UNPLUGGED,
                s -> s.state().batch().phase() == Phase.COOL
                        && s.state().cues().open().isEmpty());
        Setup seeding = cold.setup().withSeedGrams(OptionalDouble.of(60));
        State state = cold.state();
        SessionSnapshot due = cold;
        for (int i = 1; !due.state().cues().isOpen(CueId.SEED_NOW); i++) {
            assertTrue(i < 3000, "never asked for seed");
            Sample sample = new Sample(
                    cold.state().at().plusSeconds(i),
                    seeding.bowlProbe().id(),
                    Math.max(30, Math.round(100 * (46 - 0.02 * i)) / 100.0),
                    0.003,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
            state = Engine.step(seeding, state, sample).after();
            due = new SessionSnapshot(seeding, state, cold.tally(), cold.trace(), cold.rawCelsius(), cold.fault(), 0);
        }
        session.set(due);
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(new SeedAdded(NOW, 60)), inputs);
    }

    @Test
    void stepDoneInRangeProvesTheSampleAndDoesNotEndTheBatch() {
        at(CueId.IN_RANGE);
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(new SampleProved(NOW, SampleProved.Verdict.IN_TEMPER)), inputs);
    }

    @Test
    void aSampleIsProvedAnyTimeAndTheLastPressCounts() {
        desk.accept(Key.PROVED);
        assertEquals(Optional.of("Sample proved: in temper · V again: not in temper"), desk.line());
        desk.accept(Key.PROVED);
        desk.accept(Key.PROVED);
        assertEquals(
                List.of(
                        new SampleProved(NOW, SampleProved.Verdict.IN_TEMPER),
                        new SampleProved(NOW, SampleProved.Verdict.NOT_IN_TEMPER),
                        new SampleProved(NOW, SampleProved.Verdict.UNCLEAR)),
                inputs);
    }

    @Test
    void afterAMeltOutStepDoneCoolsAgainAndTheBowlGoesIntoColdWater() {
        session.set(Tapes.first(
                Tapes.OWN_WAY,
                s -> s.state().alarms().standing().contains(AlarmId.MELT_OUT)
                        && s.state().batch().place() == Place.TABLE));
        desk.accept(Key.STEP_DONE);
        assertEquals(new PhaseConfirmed(NOW, Phase.COOL), inputs.get(0));
        desk.accept(Key.BOWL_MOVED);
        assertEquals(new BowlMoved(NOW, Place.COLD_WATER), inputs.get(1));
    }

    /** "Too few crystals to pour: cool it again" is not answered by the verdict of a sample that nobody took. */
    @Test
    void withTooFewCrystalsStepDoneCoolsAgain() {
        SessionSnapshot inRange =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().cues().isOpen(CueId.IN_RANGE));
        session.set(Altered.saying(inRange, SeedWord.TOO_FEW));
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(new PhaseConfirmed(NOW, Phase.COOL)), inputs);
        assertEquals(Optional.empty(), desk.again());
        inputs.clear();
        session.set(Altered.saying(
                Tapes.first(
                        Tapes.UNPLUGGED,
                        s -> s.state().batch().phase() == Phase.WORK && nothingDueIn(s, Dip.Stage.LOOKING)),
                SeedWord.TOO_FEW));
        desk.accept(Key.STEP_DONE);
        assertEquals(List.of(), inputs, "while it is looked where a dip turns, the screen says nothing of cooling");
    }

    @Test
    void theKeyOfAVerdictWaitsForItsNextOne() {
        desk.accept(Key.PROVED);
        assertEquals(Optional.of(Key.PROVED), desk.again());
    }

    @Test
    void theBowlGoesToTheOtherPlace() {
        Place other = session.get().state().batch().contact().otherPlace(Phase.MELT);
        desk.accept(Key.BOWL_MOVED);
        assertEquals(List.of(new BowlMoved(NOW, other)), inputs);
        assertTrue(
                desk.line().orElseThrow().endsWith("U takes it back"),
                desk.line().orElseThrow());
    }

    @Test
    void marksAndNotesAreInputsThatNeedNoTakingBack() {
        desk.accept(Key.MARK);
        assertEquals(Optional.of("Mark placed"), desk.line());
        desk.accept(Key.NOTE);
        assertEquals(List.of(new Noted(NOW, ""), new Noted(NOW, "note to write")), inputs);
    }

    @Test
    void theProbeIsOutAndBackIn() {
        desk.accept(Key.PROBE_OUT);
        assertEquals(List.of(new ProbeTakenOut(NOW)), inputs);
        step(inputs.get(0));
        desk.accept(Key.PROBE_OUT);
        assertEquals(new ProbePutBack(NOW), inputs.get(1));
    }

    @Test
    void undoTakesBackTheLastAct() {
        desk.accept(Key.UNDO);
        assertEquals(List.of(), inputs);
        assertEquals(Optional.of("Nothing to take back"), desk.line());
        step(new BowlMoved(NOW, Place.TABLE));
        desk.accept(Key.UNDO);
        assertEquals(
                List.of(new Undone(
                        NOW, session.get().state().undoable().orElseThrow().sequence())),
                inputs);
    }

    @Test
    void theNextChocolateComesRoundInTheEnd() {
        String first = session.get().setup().recipe().id();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < recipes.size(); i++) {
            desk.accept(Key.CHOCOLATE);
            SetupChanged changed = (SetupChanged) inputs.get(i);
            names.add(changed.setup().recipe().id());
            step(changed);
        }
        assertEquals(recipes.size(), names.stream().distinct().count(), names.toString());
        assertEquals(first, names.get(names.size() - 1));
    }

    @Test
    void fasterAndSlowerAreNoInputs() {
        desk.accept(Key.FASTER);
        desk.accept(Key.FASTER);
        desk.accept(Key.SLOWER);
        assertEquals(1, faster.get());
        assertEquals(List.of(), inputs);
    }

    @Test
    void quitNeedsASecondPressWithinFiveSeconds() {
        desk.accept(Key.QUIT);
        assertEquals(0, stops.get());
        assertEquals(Optional.of("Press Q again to stop recording"), desk.line());
        hands.set(NOW.plusSeconds(5));
        desk.accept(Key.QUIT);
        assertEquals(0, stops.get(), "too late: a first press again");
        hands.set(NOW.plusSeconds(9));
        desk.accept(Key.QUIT);
        assertEquals(1, stops.get());
    }

    @Test
    void anotherKeyBetweenMeansTheHandWasOnTheKeysForSomethingElse() {
        desk.accept(Key.QUIT);
        desk.accept(Key.MARK);
        desk.accept(Key.QUIT);
        assertEquals(0, stops.get());
    }

    @Test
    void whatAKeyDidIsNewsForTenSeconds() {
        desk.accept(Key.MARK);
        hands.set(NOW.plusSeconds(9));
        assertTrue(desk.line().isPresent());
        hands.set(NOW.plusSeconds(10));
        assertEquals(Optional.empty(), desk.line());
    }

    @ParameterizedTest
    @EnumSource(
            value = Key.class,
            names = {"THEME", "FULL_SCREEN", "HELP"})
    void theScreensOwnKeysChangeNothingInTheSession(Key key) {
        desk.accept(key);
        assertEquals(List.of(), inputs);
        assertEquals(Optional.empty(), desk.line());
    }

    private void at(CueId cue) {
        session.set(Tapes.first(Tapes.UNPLUGGED, s -> s.state().cues().isOpen(cue)));
    }

    private void step(Input input) {
        SessionSnapshot now = session.get();
        var after = Engine.step(now.setup(), now.state(), input).after();
        session.set(new SessionSnapshot(
                after.setupInForce(now.setup()),
                after,
                now.tally(),
                now.trace(),
                now.rawCelsius(),
                now.fault(),
                now.publishedNanos()));
    }
}
