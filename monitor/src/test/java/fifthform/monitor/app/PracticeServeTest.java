package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two processes and a serial line between them: one plays the adapter, the other watches. */
@Timeout(120)
class PracticeServeTest {
    @TempDir
    Path home;

    @BeforeEach
    void needsALine() {
        SerialPair.require();
    }

    @Test
    void anotherProcessWatchesTheSimulatedBowlAndBothEndInGoodOrder() throws Exception {
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            try (Program serve = Program.start(
                            home, "practice", "serve", "first-light", "--port", line.farPort(), "--speed", "10");
                    Program watch = Program.start(
                            home, "watch", "--screen", "lines", "--probe", line.port(), "--talk", "text-lines")) {
                watch.await("readings", () -> readings(watch) >= 120);
                // The pretend line ends with its first end: whoever is still there has lost it, so the adapter goes
                // first.
                serve.askToEnd();
                assertEquals(0, serve.exit(), serve.err());
                watch.askToEnd();
                assertEquals(0, watch.exit(), watch.err());
                assertTrue(serve.out().startsWith("Stopped before"), serve.out());
                assertTrue(serve.err().contains("Speaking text-lines at 9600 8N1"), serve.err());
                List<Integer> heard = Recording.of(watch.sessions().get(0)).hundredths();
                assertTrue(heard.get(0) > 2000 && heard.get(0) < 2300, "chocolate at the room's temperature: " + heard);
                assertTrue(heard.get(heard.size() - 1) > heard.get(0) + 5, "it warms: " + heard);
            }
        }
    }

    private static int readings(Program watch) {
        try {
            List<Path> sessions = watch.sessions();
            boolean begun = watch.out().contains("Watching ") && !sessions.isEmpty();
            return begun ? Recording.of(sessions.get(0)).hundredths().size() : 0;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
