package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Recorded;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.BatchFigures;
import fifthform.monitor.store.Entry;
import fifthform.monitor.store.EventCodec;
import fifthform.monitor.store.JournalWriter;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Invented practice batches (demo) recorded once and kept in the tree: what the engine says of them today must be what
 * it said then, to the byte. Where a change is meant, its events are written anew, from the same inputs, by
 *
 * <pre>mvn -pl monitor -am test -Dtest=GoldenSessionTest -Dsurefire.failIfNoSpecifiedTests=false -Dtapes.renew=true</pre>
 *
 * and the difference belongs in the commit, to be read.
 */
class GoldenSessionTest {
    private static final Path TAPES = Path.of("src/test/resources/tapes");

    static Path golden() {
        return tape("demo-unplugged");
    }

    static Path tape(String name) {
        return TAPES.resolve(name + SessionFiles.ENDING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-unplugged", "demo-own-way"})
    void whatWasToldThenIsComputedNow(String name, @TempDir Path folder) throws Exception {
        Session session = Recording.of(tape(name)).session();
        if (Boolean.getBoolean("tapes.renew")) {
            renew(session, folder.resolve(name), tape(name));
            return;
        }
        List<String> then = session.told().map(Entry.Told::json).toList();
        assertEquals(String.join("\n", then), String.join("\n", toldNow(session)), "See above how to renew the tape.");
        assertEquals(Origin.SIMULATED, session.header().setup().origin());
        assertEquals(List.of(), session.problems());
    }

    /** A tape on which nothing happens would guard nothing. */
    @Test
    void itHoldsAWholeBatch() {
        Recording tape = Recording.of(golden());
        for (String event :
                List.of("phase-changed", "cue-given", "alarm-raised", "turned", "probe-lost", "probe-back")) {
            assertTrue(tape.was(event), event);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-unplugged", "demo-own-way"})
    void theCommandSaysTheSame(String name) {
        Said said = Said.by("replay", "--screen", "none", tape(name).toString());
        assertEquals(0, said.exit(), said.out() + said.err());
        assertTrue(said.out().startsWith("Practice batch (simulated), "), said.out());
    }

    private static List<String> toldNow(Session session) {
        List<String> told = new ArrayList<>();
        EventCodec codec = new EventCodec(session.header().start());
        step(session, (recorded, event) -> told.add(codec.write(recorded.sequence(), event)), recorded -> {});
        return told;
    }

    private static void renew(Session session, Path file, Path tape) throws Exception {
        InstantSource then = InstantSource.fixed(session.lastWall());
        JournalWriter writer = JournalWriter.create(file, session.header(), then, trouble -> fail(trouble.toString()));
        Tally tally = step(session, (recorded, event) -> writer.event(recorded.sequence(), event), writer::input);
        Setup setup = session.header().setup();
        writer.summary(BatchFigures.of(setup, tally, session.header().start()));
        writer.close();
        Files.copy(file, tape, StandardCopyOption.REPLACE_EXISTING);
    }

    private interface Telling {
        void told(Recorded recorded, Event event);
    }

    private static Tally step(Session session, Telling telling, Consumer<Recorded> given) {
        Setup setup = session.header().setup();
        State state = Engine.start(setup, session.header().start());
        Tally tally = Tally.start(state);
        for (Recorded recorded : session.inputs().toList()) {
            given.accept(recorded);
            Step step = Engine.step(setup, state, recorded.input());
            step.events().forEach(event -> telling.told(recorded, event));
            tally = tally.with(step.after().setupInForce(setup).recipe(), state, step);
            state = step.after();
        }
        return tally;
    }
}
