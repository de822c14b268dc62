package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Bath and room beside the bowl, each at its own pace and with its own faults. */
class SeveralProbesTest {
    private static final ProbeId BATH = new ProbeId("bath");
    private static final ProbeId ROOM = new ProbeId("room");

    private final Setup setup = setup();
    private final List<Event> events = new ArrayList<>();
    private State state = Engine.start(setup, StoryMaker.START);

    private static Setup setup() {
        Setup one = TestRecipes.setup();
        List<ProbeSetup> probes = new ArrayList<>(one.probes());
        probes.add(new ProbeSetup(BATH, Role.BATH, "text-lines", "", Correction.UNCHECKED, 4));
        probes.add(new ProbeSetup(ROOM, Role.ROOM, "text-lines", "", Correction.UNCHECKED, 4));
        return new Setup(
                one.recipe(),
                one.bowl(),
                probes,
                one.reactionTime(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                one.origin(),
                one.approach(),
                one.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
    }

    private void feed(Input input) {
        Step step = Engine.step(setup, state, input);
        state = step.after();
        events.addAll(step.events());
    }

    private static Sample reads(Instant at, ProbeId probe, double celsius) {
        return new Sample(at, probe, celsius, 0.03, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** An hour: the bowl twice a second, the bath once in five seconds, the room once a minute. */
    @Test
    void eachHasItsOwnPaceAndNoneIsCalledSilent() {
        for (int half = 1; half <= 7200; half++) {
            Instant at = StoryMaker.START.plusMillis(500L * half);
            feed(reads(at, StoryKitchen.BOWL, 46 + 0.05 * (half % 3)));
            if (half % 10 == 3) feed(reads(at, BATH, 50));
            if (half % 4 == 0) feed(new ProbeFault(at, ROOM, Cause.SILENT));
            if (half % 120 == 7) feed(reads(at, ROOM, 22));
            if (half > 7)
                assertTrue(state.tracks().of(ROOM).orElseThrow().freshAt(at), "room after " + half / 2 + " s");
            if (half > 3)
                assertTrue(state.tracks().of(BATH).orElseThrow().freshAt(at), "bath after " + half / 2 + " s");
        }
        assertTrue(events.stream().noneMatch(Event.ProbeLost.class::isInstance), events.toString());
        assertEquals(60, state.tracks().of(ROOM).orElseThrow().pace().periodSeconds(), 0.1);
    }

    @Test
    void whatIsWrongWithTheBathsProbeIsNotLaidToTheBowl() {
        for (int half = 1; half <= 1200; half++) {
            Instant at = StoryMaker.START.plusMillis(500L * half);
            feed(reads(at, StoryKitchen.BOWL, 46 + 0.05 * (half % 3)));
            if (half < 60) feed(reads(at, BATH, 50 + 0.1 * (half % 2)));
            else if (half < 400) feed(reads(at, BATH, 0));
            else if (half < 800) feed(new ProbeFault(at, BATH, Cause.OPEN_CIRCUIT));
        }
        List<AlarmId> raised = events.stream()
                .filter(Event.AlarmRaised.class::isInstance)
                .map(e -> ((Event.AlarmRaised) e).alarm())
                .toList();
        assertEquals(List.of(), raised);
        assertTrue(state.estimate().orElseThrow().isUsable());
        assertTrue(events.stream()
                .anyMatch(e -> e instanceof Event.ProbeLost lost && lost.probe().equals(BATH)));
    }

    private void told(Phase phase) {
        feed(new MakerAction.PhaseConfirmed(state.at(), phase));
        feed(new MakerAction.BowlMoved(state.at(), Place.TABLE));
    }

    /** Readings of the bowl alone. */
    private void minutes(double fromCelsius, double toCelsius, double minutes) {
        StraightLine.of(setup, state.at(), fromCelsius, toCelsius, minutes).forEach(this::feed);
    }

    /** A minute of readings of bowl and bath, a second apart. */
    private void minute(double fromCelsius, double toCelsius, double bathCelsius) {
        Instant begun = state.at();
        for (Sample bowl : StraightLine.of(setup, begun, fromCelsius, toCelsius, 1)) {
            feed(bowl);
            // Water never reads the same for a minute; a probe that does is doubted.
            feed(reads(bowl.at(), BATH, bathCelsius + 0.1 * (bowl.at().getEpochSecond() % 2)));
        }
    }

    /** While the bowl cools in tap water the warm bath is being made ready, and its probe is in it already. */
    @Test
    void theWarmBathIsNotTakenForTheWaterThatCools() {
        minute(46, 46, 48);
        feed(new MakerAction.BowlMoved(state.at(), Place.COLD_WATER));
        feed(new MakerAction.PhaseConfirmed(state.at(), Phase.COOL));
        minute(46, 42, 48);
        Forecast warmBesideIt = state.forecast().orElseThrow();
        assertTrue(
                warmBesideIt.course().bathCelsius() < 20, warmBesideIt.course().toString());
        assertTrue(warmBesideIt.ifLeft().celsius() < warmBesideIt.ifLifted().celsius(), warmBesideIt.toString());
        minute(42, 39, 13);
        assertEquals(13, state.forecast().orElseThrow().course().bathCelsius(), 0.2, "a probe in the cooling water");
    }

    /** Only then is there still time to cool it. */
    @Test
    void aWarmBathThatIsTooHotIsToldWhileCrystalsForm() {
        feed(new MakerAction.BowlMoved(StoryMaker.START, Place.TABLE));
        feed(new MakerAction.PhaseConfirmed(StoryMaker.START, Phase.SEED));
        minute(27.6, 27.5, 63);
        assertFalse(state.alarms().standing().contains(AlarmId.BATH_HOT), "there is time to make it ready");
        for (int i = 0; i < 4; i++) minute(27.5, 27.5, 63);
        assertTrue(
                events.stream().anyMatch(e -> e instanceof Event.AlarmRaised a && a.alarm() == AlarmId.BATH_HOT),
                events.toString());
    }

    /** A phase may be told by key too early. */
    @Test
    void whatIsWarmEnoughToBePouredIsSentOverNoBath() {
        told(Phase.SEED);
        minutes(46, 27.6, 12);
        minutes(27.6, 27.6, 6);
        told(Phase.REWARM);
        minutes(27.6, 31.5, 12);
        told(Phase.WORK);
        minutes(31.5, 31.2, 6);
        told(Phase.SEED);
        minutes(31.2, 31.1, 2);
        assertFalse(
                state.cues().isOpen(CueId.CRYSTALS_ENOUGH), state.cues().open().toString());
        assertFalse(state.cues().isOpen(CueId.PUT_BACK), state.cues().open().toString());
    }
}
