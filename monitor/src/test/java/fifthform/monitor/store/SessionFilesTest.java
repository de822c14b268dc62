package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.store.SessionFiles.Ending;
import fifthform.monitor.store.SessionFiles.Listed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionFilesTest {
    private static final Instant NOW = Instant.parse("2026-02-03T16:00:00Z");

    @TempDir
    Path root;

    @Test
    void aNewSessionTakesNoOthersName() throws StoreException {
        SessionFiles files = new SessionFiles(root.resolve("data/sessions"));
        List<String> names = List.of("", "-2", "-3");
        for (String more : names) {
            Path file = files.reserve(Demo.START, ZoneOffset.ofHours(1), "dark");
            assertEquals(
                    "2026-02-03-151516-dark" + more + ".tempering.jsonl",
                    file.getFileName().toString());
            assertEquals("2026-02-03-151516-dark" + more, SessionFiles.name(file));
        }
        assertEquals(3, files.all().size());
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Files.writeString(root.resolve("taken"), "");
        SessionFiles files = new SessionFiles(root.resolve("taken/sessions"));
        String said = "";
        try {
            files.reserve(Demo.START, ZoneOffset.UTC, "dark");
        } catch (StoreException e) {
            said = e.problem().toString();
        }
        assertTrue(said.contains("Nothing is recorded.") && said.contains("--record"), said);
    }

    @Test
    void listsWhatThereIs() throws Exception {
        SessionFiles files = new SessionFiles(root);
        assertEquals(List.of(), new SessionFiles(root.resolve("none")).list());
        byte[] demo = JournalBytes.demo();
        Files.write(root.resolve("2026-01-01-a" + SessionFiles.ENDING), demo);
        Files.write(root.resolve("2026-01-02-b" + SessionFiles.ENDING), Arrays.copyOf(demo, demo.length - 300));
        Files.write(root.resolve("2026-01-03-c" + SessionFiles.ENDING), new byte[0]);
        Files.writeString(root.resolve("notes.txt"), "x");
        List<Listed> listed = files.list();
        assertEquals(
                List.of("2026-01-03-c", "2026-01-02-b", "2026-01-01-a"),
                listed.stream()
                        .map(session -> SessionFiles.name(session.file()))
                        .toList());
        assertEquals(
                List.of(Ending.OPEN, Ending.OPEN, Ending.CLOSED),
                listed.stream().map(Listed::ending).toList());
        assertEquals(
                List.of("unusable", "demo", "demo"),
                listed.stream()
                        .map(session ->
                                session.header().fold(h -> h.setup().recipe().id(), problems -> "unusable"))
                        .toList());
    }

    @Test
    void offersWhatWasCutOffWithinTwoHours() throws Exception {
        byte[] demo = JournalBytes.demo();
        byte[] cut = Arrays.copyOf(demo, demo.length - 300);
        put("recent", cut, Duration.ofMinutes(119));
        put("old", cut, Duration.ofMinutes(121));
        put("closed", demo, Duration.ofMinutes(5));
        put("empty", new byte[0], Duration.ofMinutes(5));
        Path held = put("held", cut, Duration.ofMinutes(5));
        SessionFiles files = new SessionFiles(root);
        try (SessionLock lock = SessionLock.take(held)) {
            assertEquals(List.of("recent"), names(files.unfinished(NOW)), () -> "" + lock);
        }
        assertEquals(List.of("recent", "held"), names(files.unfinished(NOW)));
    }

    @Test
    void onceGoneOnWithAndClosedItIsNotOfferedAgain() throws Exception {
        byte[] demo = JournalBytes.demo();
        put("cut", Arrays.copyOf(demo, demo.length - 300), Duration.ofMinutes(5));
        SessionFiles files = new SessionFiles(root);
        Session session = files.unfinished(NOW).get(0);
        JournalWriter.resume(session, InstantSource.fixed(NOW), what -> {}).close();
        assertEquals(List.of(), files.unfinished(Instant.now()));
        assertEquals(Ending.CLOSED, files.list().get(0).ending());
    }

    private Path put(String name, byte[] bytes, Duration ago) throws IOException {
        Path file = Files.write(root.resolve(name + SessionFiles.ENDING), bytes);
        return Files.setLastModifiedTime(file, FileTime.from(NOW.minus(ago)));
    }

    private static List<String> names(List<Session> sessions) {
        return sessions.stream()
                .map(session -> SessionFiles.name(session.file()))
                .toList();
    }
}
