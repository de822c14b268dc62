package fifthform.monitor.session;

import static org.junit.jupiter.api.Assertions.fail;

import fifthform.monitor.intake.TapeInputs;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** The invented batches (demo) kept in the tree, step by step, for tests that need a real moment. */
public final class Tapes {
    /** Follows the cues; the probe is unplugged for half a minute while it warms. */
    public static final String UNPLUGGED = "demo-unplugged";

    /** By the thermometer alone: over-cooled, then over the range and into melt-out. */
    public static final String OWN_WAY = "demo-own-way";

    private Tapes() {}

    public static Session session(String name) {
        Path file = Path.of("src/test/resources/tapes", name + SessionFiles.ENDING);
        return JournalReader.read(file).fold(session -> session, problems -> fail(problems.toString()));
    }

    /** Looks at the batch after each of its inputs. */
    public static void each(String name, Consumer<SessionSnapshot> look) {
        loop(session(name), (snapshot, events) -> look.accept(snapshot)).run();
    }

    /** The first moment like this. */
    public static SessionSnapshot first(String name, Predicate<SessionSnapshot> wanted) {
        AtomicReference<Optional<SessionSnapshot>> found = new AtomicReference<>(Optional.empty());
        each(
                name,
                snapshot -> found.updateAndGet(
                        f -> f.isPresent() ? f : Optional.of(snapshot).filter(wanted)));
        return found.get().orElseThrow(() -> new AssertionError("no such moment in " + name));
    }

    /** Before the first input. */
    public static SessionSnapshot start(String name) {
        return loop(session(name), (snapshot, events) -> {}).snapshot();
    }

    private static SessionLoop loop(Session session, SessionListener listener) {
        TapeInputs tape =
                new TapeInputs(session.inputs().toList(), session.header().start(), Optional.empty(), Optional.empty());
        return new SessionLoop(
                session.header().setup(),
                session.header().start(),
                tape,
                SessionRecord.NONE,
                List.of(listener),
                () -> 0);
    }
}
