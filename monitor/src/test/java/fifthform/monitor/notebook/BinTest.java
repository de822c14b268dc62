package fifthform.monitor.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Snap;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionLock;
import fifthform.monitor.store.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A batch that is put away can be had back, whole. */
class BinTest {
    @TempDir
    Path data;

    private DemoBatches demo;

    @BeforeEach
    void begin() {
        demo = new DemoBatches(data);
    }

    /** Every file of the sessions' folder with its bytes. */
    private Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList())
                files.put(file.getFileName().toString(), Files.readString(file));
        }
        return files;
    }

    @Test
    void allThatBelongsToABatchGoesWithItAndComesBack() throws Exception {
        Path batch = demo.record(Plan.dark(32));
        Path other = demo.record(Plan.dark(33));
        String name = SessionFiles.name(batch);
        DemoBatches.look(batch, 24, Bloom.NONE, Snap.CLEAN);
        DemoBatches.look(other, 24, Bloom.NONE, Snap.CLEAN);
        Files.writeString(batch.resolveSibling(name + ".notes.jsonl"), "{}\n");
        Files.writeString(
                batch.resolveSibling("2026-01-05-190000-dark.proof.jsonl"),
                "{\"k\":\"h\",\"session\":\"" + name + "\"}\n");
        Files.writeString(
                batch.resolveSibling("2026-01-06-190000-dark.proof.jsonl"), "{\"k\":\"h\",\"session\":\"another\"}\n");
        Map<String, String> before = files(demo.sessions());

        Bin.Binned binned = demo.bin().put(batch);
        assertEquals(4, binned.files());
        Map<String, String> left = files(demo.sessions());
        assertEquals(3, left.size(), left.keySet().toString());
        assertTrue(left.containsKey(other.getFileName().toString()));
        assertEquals(List.of(binned), demo.bin().list());

        demo.bin().restore(binned);
        assertEquals(before, files(demo.sessions()));
        assertEquals(List.of(), demo.bin().list());
    }

    @Test
    void aNameThatBeginsAlikeIsAnotherBatch() throws Exception {
        Path batch = demo.record(Plan.dark(32));
        Path second = Files.copy(batch, batch.resolveSibling(SessionFiles.name(batch) + "-2" + SessionFiles.ENDING));
        demo.bin().put(batch);
        assertTrue(Files.exists(second));
    }

    @Test
    void emptyingTakesWhatWasAskedAboutAndNothingThatCameLater() throws Exception {
        Path first = demo.record(Plan.dark(32));
        Path second = demo.record(Plan.dark(33));
        demo.bin().put(first);
        List<Bin.Binned> asked = demo.bin().list();
        demo.bin().put(second);
        assertEquals(1, demo.bin().empty(asked));
        assertEquals(
                List.of(SessionFiles.name(second)),
                demo.bin().list().stream().map(Bin.Binned::name).toList());
        assertEquals(0, demo.bin().empty(asked));
    }

    @Test
    void aSessionThatIsBeingWrittenStays() throws Exception {
        Path batch = demo.record(Plan.dark(32));
        try (SessionLock lock = SessionLock.take(batch)) {
            assertNotNull(lock);
            assertThrows(StoreException.class, () -> demo.bin().put(batch));
        }
        assertTrue(Files.exists(batch));
        assertEquals(List.of(), demo.bin().list());
    }

    @Test
    void whatHasTakenItsNameIsLeftAlone() throws Exception {
        Path batch = demo.record(Plan.dark(32));
        Bin.Binned binned = demo.bin().put(batch);
        Files.writeString(batch, "something new");
        IOException said = assertThrows(IOException.class, () -> demo.bin().restore(binned));
        assertTrue(said.getMessage().contains("is there already"), said.getMessage());
        assertEquals("something new", Files.readString(batch));
        assertEquals(1, demo.bin().list().size());
    }

    /** The program ended after the session was moved and before its looks were. */
    @Test
    void aMoveThatWasBrokenOffLosesNothing() throws Exception {
        Path batch = demo.record(Plan.dark(32));
        DemoBatches.look(batch, 24, Bloom.NONE, Snap.CLEAN);
        Map<String, String> before = files(demo.sessions());
        Path own = Files.createDirectories(demo.binFolder().resolve(SessionFiles.name(batch)));
        Files.move(batch, own.resolve(batch.getFileName()));
        demo.bin().restore(demo.bin().list().get(0));
        assertEquals(before, files(demo.sessions()));
    }

    /** Two programs, each with a bin of its own on the same folder, put away and bring back all at once. */
    @Test
    void twoAtOnceLoseNothing() throws Exception {
        List<Path> batches = new ArrayList<>();
        for (int i = 0; i < 6; i++) batches.add(demo.record(Plan.dark(32)));
        for (Path batch : batches) DemoBatches.look(batch, 24, Bloom.NONE, Snap.CLEAN);
        Map<String, String> before = files(demo.sessions());
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Future<?>> both = new ArrayList<>();
            for (int program = 0; program < 2; program++)
                both.add(two.submit(() -> {
                    Bin bin = new Bin(demo.binFolder(), demo.sessions());
                    for (int round = 0; round < 5; round++) {
                        for (Path batch : batches) quietly(() -> bin.put(batch));
                        for (Bin.Binned each : bin.list()) quietly(() -> bin.restore(each));
                    }
                    return null;
                }));
            for (Future<?> each : both) each.get();
        } finally {
            two.shutdownNow();
        }
        for (Bin.Binned each : demo.bin().list()) demo.bin().restore(each);
        assertEquals(before, files(demo.sessions()));
        assertFalse(files(demo.binFolder()).keySet().stream().anyMatch(name -> name.endsWith(".jsonl")));
    }

    private interface Act {
        Object done() throws Exception;
    }

    /** That the other one was first is no failure; that something is gone would be. */
    private static void quietly(Act act) {
        try {
            act.done();
        } catch (Exception theOtherWasFirst) {
            assertTrue(
                    theOtherWasFirst instanceof IOException || theOtherWasFirst instanceof StoreException,
                    theOtherWasFirst.toString());
        }
    }
}
