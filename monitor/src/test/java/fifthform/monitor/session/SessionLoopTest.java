package fifthform.monitor.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Sample;
import fifthform.monitor.intake.InputSource;
import fifthform.monitor.intake.TapeInputs;
import fifthform.monitor.store.Entry;
import fifthform.monitor.store.Session;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The loop goes on whatever stumbles: a monitor that admits a fault beats one that stops. */
class SessionLoopTest {
    private final Session session = Tapes.session(Tapes.UNPLUGGED);
    private final List<Recorded> inputs = session.inputs().limit(600).toList();
    private final Log log = new Log();

    @Test
    void recordsEachInputBeforeWhatIsToldOfItAndPublishesTheState() {
        SessionLoop loop = loop(tape(session.inputs().toList()), Engine::step);
        loop.run();
        assertEquals(session.inputs().toList(), log.inputs);
        assertEquals(session.told().count(), log.events);
        assertEquals(session.lastAt(), loop.snapshot().state().at());
        assertEquals(4, log.forced, "one for each change of phase");
        assertTrue(loop.snapshot().trace().size() > 1000);
        assertEquals(
                List.of("cool", "seed", "rewarm", "work"),
                loop.snapshot().trace().flags().stream()
                        .map(TraceView.Flag::word)
                        .toList());
    }

    @Test
    void anEngineThatStumblesIsAdmittedAndTheSessionGoesOn() {
        List<SessionSnapshot> seen = new ArrayList<>();
        SessionLoop loop = new SessionLoop(
                session.header().setup(),
                session.header().start(),
                tape(inputs),
                log,
                List.of((snapshot, events) -> seen.add(snapshot)),
                () -> 0,
                (header, before, input) -> {
                    boolean bad = input.at().isAfter(inputs.get(99).input().at())
                            && input.at().isBefore(inputs.get(200).input().at());
                    if (bad) throw new IllegalStateException("demo");
                    return Engine.step(header, before, input);
                });
        loop.run();
        assertEquals(inputs, log.inputs, "nothing that was read is lost");
        assertEquals(1, log.notes.size(), "said once, not with each reading: " + log.notes);
        assertTrue(log.notes.get(0).contains("IllegalStateException: demo"), log.notes.get(0));
        SessionSnapshot during = seen.get(150);
        assertEquals(Optional.of("java.lang.IllegalStateException: demo"), during.fault());
        Sample last = (Sample) inputs.subList(0, 151).stream()
                .map(Recorded::input)
                .filter(i -> i instanceof Sample s && s.probe().name().equals("bowl"))
                .reduce((one, other) -> other)
                .orElseThrow();
        assertEquals(OptionalDouble.of(last.tipCelsius()), during.rawCelsius());
        assertEquals(Optional.empty(), loop.snapshot().fault(), "it has recovered");
        assertEquals(inputs.get(599).input().at(), loop.snapshot().state().at());
    }

    @Test
    void aListenerThatStumblesDoesNotEndTheRecording() {
        SessionLoop loop = new SessionLoop(
                session.header().setup(),
                session.header().start(),
                tape(inputs),
                log,
                List.of((snapshot, events) -> {
                    if (log.inputs.size() == 10) throw new IllegalStateException("sound");
                }),
                () -> 0);
        loop.run();
        assertEquals(inputs, log.inputs);
        assertEquals(1, log.notes.size());
    }

    /** Killed between an input's line and the line of what it led to: told when the session goes on. */
    @Test
    void whatWasAboutToBeToldIsRecordedWhenItGoesOn() {
        List<Entry> entries = session.entries();
        int cut = 0;
        while (!(entries.get(cut) instanceof Entry.Told)) cut++;
        Session torn =
                new Session(session.file(), session.header(), entries.subList(0, cut), session.lastWall(), List.of());
        SessionLoop loop = loop(tape(List.of()), Engine::step);
        loop.catchUp(torn);
        assertEquals(1, log.events);
        assertEquals(List.of(), log.inputs, "what stands in the file is not written again");
        assertEquals(torn.lastAt(), loop.snapshot().state().at());
        Session whole = new Session(
                session.file(), session.header(), entries.subList(0, cut + 1), session.lastWall(), List.of());
        log.events = 0;
        loop(tape(List.of()), Engine::step).catchUp(whole);
        assertEquals(0, log.events);
    }

    private SessionLoop loop(InputSource source, SessionLoop.Stepper stepper) {
        return new SessionLoop(
                session.header().setup(), session.header().start(), source, log, List.of(), () -> 0, stepper);
    }

    private TapeInputs tape(List<Recorded> given) {
        return new TapeInputs(given, session.header().start(), Optional.empty(), Optional.empty());
    }

    private static final class Log implements SessionRecord {
        private final List<Recorded> inputs = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private int events;
        private int forced;

        @Override
        public void input(Recorded recorded) {
            inputs.add(recorded);
        }

        @Override
        public void event(long sequence, Event event) {
            if (!inputs.isEmpty())
                assertEquals(sequence, inputs.get(inputs.size() - 1).sequence());
            events++;
        }

        @Override
        public void note(Instant at, String about, String text) {
            notes.add(about + ": " + text);
        }

        @Override
        public void force() {
            forced++;
        }
    }
}
