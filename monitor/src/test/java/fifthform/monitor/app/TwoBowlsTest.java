package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two bowls, two programs, one data folder: each keeps its own session whole. */
@Timeout(120)
class TwoBowlsTest {
    @TempDir
    Path home;

    @Test
    void eachHasItsOwnSession() throws Exception {
        try (Program dark = start("first-light");
                Program milk = start("milk")) {
            dark.await("both sessions", () -> sessions(dark).size() == 2 && both(sessions(dark)));
            dark.askToEnd();
            milk.askToEnd();
            assertEquals(0, dark.exit(), dark.err());
            assertEquals(0, milk.exit(), milk.err());
            List<Session> kept = sessions(dark).stream()
                    .map(TwoBowlsTest::read)
                    .map(Optional::orElseThrow)
                    .toList();
            assertEquals(2, kept.size());
            for (Session session : kept) assertTrue(session.isClosed(), () -> session.file() + " is not whole");
            assertEquals(
                    List.of("dark", "milk"),
                    kept.stream()
                            .map(s -> s.header().setup().recipe().id())
                            .sorted()
                            .toList());
            assertTrue(!dark.err().contains("cut off") && !milk.err().contains("cut off"), dark.err() + milk.err());
        }
    }

    private Program start(String scenario) throws Exception {
        return Program.start(home, "watch", "--probe", "practice:" + scenario, "--screen", "none", "--speed", "60");
    }

    private static List<Path> sessions(Program program) {
        try {
            return program.sessions();
        } catch (java.io.IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    /** Both have got some readings. */
    private static boolean both(List<Path> files) {
        return files.stream()
                .allMatch(
                        file -> read(file).filter(s -> s.inputs().count() > 100).isPresent());
    }

    private static Optional<Session> read(Path file) {
        return JournalReader.read(file).fold(Optional::of, problems -> Optional.empty());
    }
}
