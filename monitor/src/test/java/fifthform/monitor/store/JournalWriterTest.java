package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.StoreTrouble.What;
import fifthform.curves.input.Tick;
import fifthform.monitor.json.JsonLine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalWriterTest {
    private static final Pace QUICK =
            new Pace(Duration.ofMillis(20), Duration.ofMillis(20), Duration.ofMillis(150), Duration.ofMillis(200));
    private static final InstantSource WALL = InstantSource.fixed(Demo.START.plusSeconds(60));

    @TempDir
    Path folder;

    private final Queue<What> told = new ConcurrentLinkedQueue<>();
    private final FailingFile disk = new FailingFile();
    private Path file;
    private long sequence;

    @BeforeEach
    void place() {
        file = folder.resolve("demo" + SessionFiles.ENDING);
    }

    @Test
    void whatIsWrittenIsRead() throws Exception {
        try (JournalWriter writer = JournalWriter.create(file, Demo.HEADER, WALL, told::add)) {
            for (Input input : Demo.INPUTS) writer.input(new Recorded(++sequence, input));
            for (Event event : Demo.EVENTS) writer.event(sequence, event);
            writer.note(Demo.at(20), "clock", "The clock was set back.");
            writer.summary(new JsonLine().text("verdict", "demo").number("highest_work_c", 31.9));
        }
        Session session = read();
        assertEquals(Demo.HEADER, session.header());
        assertEquals(Demo.INPUTS, inputs(session));
        assertEquals(Demo.EVENTS.size(), session.told().count());
        assertTrue(session.isClosed());
        assertEquals(WALL.instant(), session.lastWall());
        assertEquals(List.of(), session.problems());
        assertEquals(List.of(), List.copyOf(told));
        assertTrue(Files.readString(file).contains("\"summary\":{\"verdict\":\"demo\",\"highest_work_c\":31.9}"));
        assertFalse(Files.exists(folder.resolve("demo" + SessionFiles.ENDING + ".lock")));
    }

    @Test
    void theThreadEndsWithTheSession() throws Exception {
        JournalWriter writer = JournalWriter.create(file, Demo.HEADER, WALL, told::add);
        assertTrue(journalThreads() > 0);
        writer.close();
        writer.close();
        await(() -> journalThreads() == 0);
        assertEquals(
                1,
                Files.readString(file)
                        .lines()
                        .filter(l -> l.contains("\"k\":\"z\""))
                        .count());
    }

    /** As after kill -9: nobody closed anything, and yet all that was written a moment ago is there. */
    @Test
    void unclosedItCanBeRead() throws Exception {
        JournalWriter writer = JournalWriter.create(file, Demo.HEADER, WALL, told::add);
        for (Input input : Demo.INPUTS) writer.input(new Recorded(++sequence, input));
        await(() ->
                JournalReader.read(file).fold(found -> found.inputs().count(), problems -> -1L) == Demo.INPUTS.size());
        Session session = read();
        assertEquals(Demo.INPUTS, inputs(session));
        assertFalse(session.isClosed());
        writer.close();
    }

    @Test
    void aCheckVouchesForEachHalfSecondAndIsForced() throws Exception {
        JournalWriter writer = writer();
        tick(writer, 3);
        await(() -> checks() == 2);
        int forces = disk.forces();
        assertTrue(forces >= 1);
        // Without lines there is nothing to vouch for, and the disk is left alone.
        Thread.sleep(100);
        assertEquals(forces, disk.forces());
        assertEquals(2, checks());
        writer.close();
        assertWhole(3);
    }

    /** A full disk stops in the middle of a line; once there is room the journal goes on at that very byte. */
    @Test
    void aFullDiskCostsNothing() throws Exception {
        JournalWriter writer = writer();
        tick(writer, 1);
        await(() -> checks() == 2);
        disk.room(33);
        tick(writer, 50);
        await(() -> told.contains(What.CANNOT_WRITE));
        assertFalse(disk.text().endsWith("\n"), "the disk stopped within a line");
        tick(writer, 50);
        disk.room(Long.MAX_VALUE);
        await(() -> told.contains(What.WRITES_AGAIN));
        writer.close();
        assertEquals(List.of(What.CANNOT_WRITE, What.WRITES_AGAIN), List.copyOf(told));
        assertWhole(101);
    }

    @Test
    void whatNoDiskTakesIsKeptElsewhereAndSaid() throws Exception {
        JournalWriter writer = writer();
        disk.room(0);
        tick(writer, 5);
        StoreException refused = assertThrows(StoreException.class, writer::close);
        String said = refused.problem().what();
        Path rest = Path.of(said.replaceAll(".*kept in (.*)\\.$", "$1"));
        String kept = Files.readString(rest);
        Files.delete(rest);
        assertEquals(
                5, kept.lines().filter(line -> line.contains("\"k\":\"t\"")).count());
        Files.writeString(file, disk.text() + kept);
        assertEquals(5, inputs(read()).size());
    }

    @Test
    void aDiskThatHangsIsNoticedWhileItHangs() throws Exception {
        JournalWriter writer = writer();
        disk.stall();
        tick(writer, 1);
        await(() -> {
            tick(writer, 1);
            return told.contains(What.BEHIND);
        });
        disk.goOn();
        await(() -> told.contains(What.WRITES_AGAIN));
        assertEquals(List.of(What.BEHIND, What.WRITES_AGAIN), List.copyOf(told));
        writer.close();
    }

    @Test
    void littleRoomIsSaid() throws Exception {
        disk.usable(49_000_000);
        JournalWriter writer = writer();
        await(() -> told.contains(What.SPACE_LOW));
        writer.close();
        assertEquals(List.of(What.SPACE_LOW), List.copyOf(told));
    }

    @Test
    void twoProgramsCannotWriteOneSession() throws Exception {
        JournalWriter writer = JournalWriter.create(file, Demo.HEADER, WALL, told::add);
        await(() -> Files.size(file) > 0);
        Session session = read();
        StoreException refused =
                assertThrows(StoreException.class, () -> JournalWriter.resume(session, WALL, told::add));
        assertTrue(refused.getMessage().contains("Another running Fifth Form"), refused::getMessage);
        writer.close();
        refused = assertThrows(StoreException.class, () -> JournalWriter.create(file, Demo.HEADER, WALL, told::add));
        assertTrue(refused.getMessage().contains("a session in this file already"), refused::getMessage);
        assertTrue(read().isClosed());
    }

    @Test
    void aFolderThatIsGoneIsSaid() {
        Path gone = folder.resolve("gone").resolve("x" + SessionFiles.ENDING);
        StoreException refused =
                assertThrows(StoreException.class, () -> JournalWriter.create(gone, Demo.HEADER, WALL, told::add));
        assertTrue(refused.problem().whatToDo().contains("--record"));
    }

    /** Torn at any byte after the header, it goes on: old bytes stay, the gap is marked, the sums agree. */
    @Test
    void goesOnWithATornSession() throws Exception {
        byte[] demo = JournalBytes.demo();
        int headerBytes = Demo.HEADER.line().getBytes(StandardCharsets.UTF_8).length;
        // The last 300 bytes hold notes, check lines, a line of unknown kind and the closing line.
        for (int length = headerBytes; length < demo.length - 100; length += length < demo.length - 300 ? 997 : 3) {
            byte[] torn = Arrays.copyOf(demo, length);
            Files.write(file, torn);
            Session before = read();
            try (JournalWriter writer = JournalWriter.resume(before, WALL, told::add)) {
                writer.input(new Recorded(before.nextSequence(), new Tick(WALL.instant())));
            }
            byte[] after = Files.readAllBytes(file);
            assertEquals(
                    new String(torn, StandardCharsets.UTF_8),
                    new String(after, 0, length, StandardCharsets.UTF_8),
                    "what stood there stays");
            Session session = read();
            assertEquals(inputs(before).size() + 1, inputs(session).size());
            assertTrue(session.entries().stream()
                    .anyMatch(entry -> entry instanceof Entry.Note note
                            && note.about().equals("resumed")
                            && note.at().equals(WALL.instant())));
            assertFalse(session.problems().toString().contains("not as they were written"), "" + session.problems());
            assertTrue(session.isClosed());
        }
    }

    @Test
    void laterLinesAfterTheClosingLineAreKept() throws Exception {
        JournalWriter.create(file, Demo.HEADER, WALL, told::add).close();
        Files.writeString(file, "{\"k\":\"look\",\"bloom\":\"none\"}\n", StandardOpenOption.APPEND);
        Session session = read();
        assertTrue(session.isClosed());
        assertTrue(session.entries().contains(new Entry.Unknown("look", "{\"k\":\"look\",\"bloom\":\"none\"}")));
    }

    private JournalWriter writer() throws StoreException {
        JournalWriter writer = new JournalWriter(
                file, disk, SessionLock.take(file), Demo.START, new CheckedLines(), WALL, told::add, QUICK);
        writer.begin(Demo.HEADER);
        await(() -> checks() == 1);
        return writer;
    }

    private int checks() {
        return disk.text().split("\"k\":\"c\"", -1).length - 1;
    }

    private void tick(JournalWriter writer, int times) {
        for (int i = 0; i < times; i++) {
            sequence++;
            writer.input(new Recorded(sequence, new Tick(Demo.at(sequence))));
        }
    }

    private void assertWhole(int inputs) throws IOException {
        Files.writeString(file, disk.text());
        Session session = read();
        assertEquals(inputs, inputs(session).size());
        assertEquals(List.of(), session.problems());
    }

    private Session read() {
        return JournalReader.read(file).fold(session -> session, problems -> fail(problems.toString()));
    }

    private static List<Input> inputs(Session session) {
        return session.inputs().map(Recorded::input).toList();
    }

    private static long journalThreads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("journal"))
                .count();
    }

    /** A condition that may ask the disk. */
    private interface Condition {
        boolean holds() throws IOException;
    }

    private static void await(Condition condition) {
        long until = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        try {
            while (!condition.holds()) {
                if (System.nanoTime() - until > 0) fail("waited in vain");
                Thread.sleep(5);
            }
        } catch (IOException | InterruptedException e) {
            fail(e);
        }
    }
}
