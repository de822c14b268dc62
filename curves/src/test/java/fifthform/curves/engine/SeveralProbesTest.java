package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
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
}
