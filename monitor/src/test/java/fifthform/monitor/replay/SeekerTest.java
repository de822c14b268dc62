package fifthform.monitor.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.input.Recorded;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.JournalReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Any moment, from wherever one comes, has the state that the engine had there when it went through all. */
class SeekerTest {
    @TempDir
    Path folder;

    private static SecondPass through(Recording recording) {
        SecondPass pass = new SecondPass(recording, new KnownWords(Units.CELSIUS), WhatIfs.NONE);
        pass.run();
        return pass;
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-own-way", "demo-unplugged"})
    void aMomentIsWhatTheWholeWayThereGives(String name) throws IOException {
        Path file = Desks.tape(name, folder);
        Recording recording = Desks.read(file);
        Seeker seeker = new Seeker(recording, through(recording));
        List<Recorded> inputs =
                JournalReader.read(file).fold(s -> s.inputs().toList(), problems -> fail(problems.toString()));
        Random random = new Random(5);
        for (int i = 0; i < 25; i++) {
            long nanos = Math.floorMod(random.nextLong(), recording.endNanos());
            assertEquals(
                    Optional.of(straight(recording, inputs, nanos).toString()),
                    seeker.at(nanos).map(State::toString));
        }
        assertEquals(
                straight(recording, inputs, recording.endNanos()).toString(),
                seeker.at(recording.endNanos()).orElseThrow().toString());
    }

    private static State straight(Recording recording, List<Recorded> inputs, long nanos) {
        State state = Engine.start(recording.setup(), recording.start());
        for (Recorded recorded : inputs) {
            if (recording.nanos(recorded.input().at()) > nanos) break;
            state = Engine.step(recording.setup(), state, recorded.input()).after();
        }
        return state;
    }

    @Test
    void whatIsNotComputedYetIsNotMadeUp() throws IOException {
        Recording recording = Desks.read(Desks.tape("demo-own-way", folder));
        SecondPass pass = new SecondPass(recording, new KnownWords(Units.CELSIUS), WhatIfs.NONE);
        assertEquals(Optional.empty(), new Seeker(recording, pass).at(60_000_000_000L));
        assertEquals(Optional.empty(), pass.whole());
    }

    @Test
    void whatIsToldNowIsWhatWasToldThenToTheByte() {
        Recording recording = Desks.read(Desks.tape("demo-unplugged", folder));
        SecondPass pass = through(recording);
        assertEquals(
                recording.toldLines(),
                pass.computed().stream().map(SecondPass.Computed::line).toList());
        assertTrue(pass.faults().isEmpty(), pass.faults().toString());
    }

    @Test
    void eachStepIsShownToWhoLooksForCauses() {
        Recording recording = Desks.read(Desks.tape("demo-own-way", folder));
        long[] seen = {0, 0};
        Findings counting = new Findings() {
            @Override
            public void follow(Recorded input, SessionSnapshot now, List<Event> events) {
                seen[0]++;
                seen[1] += events.size();
                assertEquals(seen[0], now.state().inputs());
            }

            @Override
            public List<Finding> found(Recording of, SessionSnapshot last) {
                return List.of(new Finding(Optional.empty(), "counted", ""));
            }
        };
        WhatIf later = new WhatIf("lifted 5 s later", "turns at 36 °C", List.of());
        SecondPass pass = new SecondPass(recording, counting, (of, last) -> List.of(later));
        pass.run();
        assertEquals(recording.inputs(), seen[0]);
        assertEquals(recording.toldLines().size(), seen[1]);
        SecondPass.Whole whole = pass.whole().orElseThrow();
        assertEquals("counted", whole.findings().get(0).words());
        assertEquals(List.of(later), whole.whatIfs());
    }
}
