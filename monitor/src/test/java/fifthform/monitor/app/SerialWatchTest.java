package fifthform.monitor.app;

import static fifthform.monitor.app.Recording.range;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.input.Input;
import fifthform.curves.setup.Origin;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The whole program on a real serial line: its bytes come from a shell through the operating system's driver. */
@Timeout(180)
class SerialWatchTest {
    @TempDir
    Path home;

    @BeforeEach
    void needsALine() {
        SerialPair.require();
    }

    @Test
    void everyLineIsHeldAndAPulledPlugIsAGapInOneSession() throws Exception {
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            try (Program watch = watching(line)) {
                line.send(3001, 3060, "0.06");
                watch.await("the first lines", () -> readings(watch) >= 60);

                line.unplug();
                watch.await("the loss", () -> only(watch).was("probe-lost"));
                line.plugIn();
                watch.await("the return", () -> line.isHeldBy(watch.pid()));
                line.send(3061, 3120, "0.06");
                watch.await("the lines after it", () -> readings(watch) >= 120);

                watch.askToEnd();
                assertEquals(0, watch.exit(), watch.err());
                Path file = watch.sessions().get(0);
                assertTrue(watch.out().contains("Kept in " + file), watch.out());
                assertTrue(watch.out().contains("Batch, Dark"), watch.out());
            }
        }
        Path file = onlySession();
        Recording kept = Recording.of(file);
        assertEquals(range(3001, 3120), kept.hundredths());
        assertTrue(kept.was("probe-back"));
        assertTrue(kept.session().isClosed());
        assertEquals(List.of(), kept.session().problems());
        assertEquals(Origin.REAL, kept.session().header().setup().origin());
        kept.hasUnbrokenNumbers();
        replaysAlike(file);
    }

    @Test
    void killedItLosesAtMostOneReadingAndGoesOnInTheSameFile() throws Exception {
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            int sent;
            try (Program watch = watching(line)) {
                line.send(3001, 3400, "0.2");
                watch.await("some lines", () -> line.sent() >= 12);
                sent = line.sent();
                watch.kill();
            }
            line.unplug();
            line.plugIn();

            Program other =
                    Program.ran(home, "watch", "--probe", home.resolve("none").toString());
            Path file = other.sessions().get(0);
            Recording cut = Recording.of(file);
            int kept = cut.hundredths().size();
            assertEquals(range(3001, 3000 + kept), cut.hundredths());
            assertTrue(kept >= sent - 1, kept + " of " + sent);
            assertFalse(cut.session().isClosed());
            assertEquals(3, other.exit());
            assertTrue(other.err().contains("was cut off; its " + kept + " readings are kept in " + file), other.err());
            replaysAlike(file);

            try (Program goingOn = Program.start(home, "watch", "--go-on", "--screen", "none")) {
                goingOn.await("the port", () -> line.isHeldBy(goingOn.pid()));
                line.send(3101, 3120, "0.06");
                goingOn.await("more lines", () -> readings(goingOn) >= kept + 20);
                goingOn.askToEnd();
                assertEquals(0, goingOn.exit(), goingOn.err());
                assertEquals(List.of(file), goingOn.sessions());
            }
            Recording whole = Recording.of(file);
            assertTrue(whole.session().isClosed());
            assertEquals(1, whole.notes("resumed").size());
            assertEquals(range(3101, 3120), whole.hundredths().subList(kept, kept + 20));
            whole.hasUnbrokenNumbers();
            // The time nobody watched is a gap like any other: no reading, no tick, and the next one is later.
            Instant before = cut.session().lastAt();
            Instant after = whole.inputs().stream()
                    .map(Input::at)
                    .filter(at -> at.isAfter(before))
                    .findFirst()
                    .orElseThrow();
            assertTrue(Duration.between(before, after).toMillis() > 500, before + " to " + after);
            replaysAlike(file);
            assertFalse(
                    Program.ran(home, "watch", "--probe", home.resolve("none").toString())
                            .err()
                            .contains("cut off"));
        }
    }

    @Test
    void aPortThatAnotherProgramHoldsIsSaidAndNothingIsBegun() throws Exception {
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            try (Program first = watching(line)) {
                Program second = Program.ran(home, "watch", "--screen", "none", "--probe", line.port());
                assertEquals(3, second.exit());
                assertTrue(second.err().contains("is held by another program"), second.err());
                assertTrue(second.err().contains("No reading can be taken."), second.err());
                assertTrue(second.err().contains("Close the other program"), second.err());
                assertFalse(second.err().contains("\tat "), second.err());
                assertEquals(1, second.sessions().size());
                assertTrue(first.isRunning());
                first.askToEnd();
                assertEquals(0, first.exit());
            }
        }
    }

    @Test
    void howItTalksIsFoundOutOnceAndRemembered() throws Exception {
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            line.send(3001, 3400, "0.2");
            try (Program watch = Program.start(home, "watch", "--screen", "lines", "--probe", line.port())) {
                watch.await("readings", () -> readingsOfNewest(watch) >= 5);
                watch.askToEnd();
                assertEquals(0, watch.exit(), watch.err());
                assertTrue(watch.err().contains("It talks text-lines at 9600 8N1"), watch.err());
            }
            try (Program again = Program.start(home, "watch", "--screen", "lines", "--probe", line.port())) {
                again.await("another session", () -> sessions(again).size() == 2);
                again.await("readings", () -> readingsOfNewest(again) >= 5);
                again.askToEnd();
                assertEquals(0, again.exit(), again.err());
                assertFalse(again.err().contains("Listening"), again.err());
                // On Ctrl-C the serial library closes the ports by itself: that is no pulled plug.
                for (Path file : sessions(again)) assertFalse(Recording.of(file).was("probe-lost"), file.toString());
            }
        }
    }

    @Test
    void aWayOfTalkingThatIsNotKnownAnyMoreIsFoundOutAnew() throws Exception {
        try (SerialPair line = new SerialPair(home)) {
            Path probes = Files.createDirectories(home.resolve("data/fifthform/probes"));
            Files.writeString(probes.resolve("odd.jsonl"), """
                    {"k":"adapter","format":1}
                    {"k":"used","place":"%s","talk":"by-flags"}
                    {"k":"probe","channel":0,"role":"bowl","class":"unknown","converter":"unknown"}
                    """.formatted(line.port()));
            line.plugIn();
            line.send(3001, 3400, "0.2");
            try (Program watch = Program.start(home, "watch", "--screen", "lines", "--probe", line.port())) {
                watch.await("readings", () -> readingsOfNewest(watch) >= 5);
                watch.askToEnd();
                assertEquals(0, watch.exit(), watch.err());
                assertTrue(watch.err().contains("talks by-flags, which this program does not know"), watch.err());
                assertTrue(watch.err().contains("It talks text-lines"), watch.err());
            }
        }
    }

    @Test
    void whatAnAskedAdapterComplainsOfIsSaid() throws Exception {
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            // Nobody sits at the far end, as with a wrong unit number.
            try (Program watch = Program.start(
                    home,
                    "watch",
                    "--screen",
                    "lines",
                    "--probe",
                    line.port(),
                    "--talk",
                    "modbus-rtu:parity=none,unit=9,register=8")) {
                watch.await("the complaint", () -> watch.out().contains("Unit 9 has not answered"));
                assertTrue(watch.out().contains("Check that the device has power, its unit number"), watch.out());
                Thread.sleep(4000); // some more questions
                assertEquals(2, watch.out().split("Unit 9 has not answered", -1).length, watch.out());
                watch.askToEnd();
                assertEquals(0, watch.exit(), watch.err());
            }
        }
    }

    private static int readingsOfNewest(Program program) {
        List<Path> all = sessions(program);
        return all.isEmpty() || !hasBegun(program)
                ? 0
                : Recording.of(all.get(all.size() - 1)).hundredths().size();
    }

    private static List<Path> sessions(Program program) {
        try {
            return program.sessions();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path onlySession() throws IOException {
        try (Stream<Path> files = Files.list(home.resolve("data/fifthform/sessions"))) {
            return files.reduce((one, other) -> fail("two sessions: " + one + ", " + other))
                    .orElseThrow();
        }
    }

    private Program watching(SerialPair line) throws Exception {
        Program watch =
                Program.start(home, "watch", "--screen", "lines", "--probe", line.port(), "--talk", "text-lines");
        watch.await("the port", () -> line.isHeldBy(watch.pid()) && hasBegun(watch));
        return watch;
    }

    private void replaysAlike(Path file) throws Exception {
        Program replay = Program.ran(home, "replay", "--screen", "none", file.toString());
        assertTrue(replay.out().contains("Told then and computed now: the same"), replay.out());
        assertEquals(Recording.of(file).session().problems().isEmpty() ? 0 : 1, replay.exit(), replay.err());
    }

    private static boolean hasBegun(Program watch) {
        return watch.out().contains("Watching ");
    }

    private static int readings(Program watch) {
        return only(watch).hundredths().size();
    }

    private static Recording only(Program watch) {
        try {
            List<Path> sessions = watch.sessions();
            assertEquals(1, sessions.size());
            return Recording.of(sessions.get(0));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
