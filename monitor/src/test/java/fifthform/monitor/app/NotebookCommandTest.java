package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Snap;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.store.SessionFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The notebook where there is no window. */
class NotebookCommandTest {
    @TempDir
    Path data;

    private DemoBatches demo;

    @BeforeEach
    void begin() {
        demo = new DemoBatches(data);
    }

    private Said notebook(String... more) {
        List<String> words = new ArrayList<>(List.of("notebook"));
        words.addAll(List.of(more));
        words.addAll(List.of("--data", data.toString()));
        return Said.by(words.toArray(String[]::new));
    }

    private Said lines(String... more) {
        List<String> words = new ArrayList<>(List.of("--screen", "lines"));
        words.addAll(List.of(more));
        return notebook(words.toArray(String[]::new));
    }

    @Test
    void anEmptyNotebookSaysWhatToDo() {
        Said said = lines();
        assertEquals(0, said.exit());
        assertTrue(said.out().contains("No batch is recorded yet."), said.out());
        assertTrue(said.out().contains("monitor/run watch --probe practice"), said.out());
    }

    @Test
    void theTableIsFilteredAndSorted() throws Exception {
        String hot = SessionFiles.name(demo.record(Plan.dark(33.2)));
        String mild = SessionFiles.name(demo.record(Plan.dark(31.9)));
        String milk = SessionFiles.name(demo.record(Plan.dark(30.4).of("milk").in("demo glass")));
        demo.record(Plan.dark(32).practised());
        Said all = lines();
        assertEquals(0, all.exit(), all.err());
        List<String> names = all.out()
                .lines()
                .filter(l -> l.startsWith("2026-"))
                .map(l -> l.split(" ")[0])
                .toList();
        assertEquals(List.of(milk, mild, hot), names);
        assertTrue(all.out().contains("Practice batches left out: 1. Show them with --practice."), all.out());
        assertTrue(lines("--sort", "peak").out().indexOf(mild)
                < lines("--sort", "peak").out().indexOf(hot));
        assertFalse(lines("--chocolate", "dark").out().contains(milk));
        assertTrue(lines("--bowl", "demo glass").out().contains(milk));
        assertFalse(lines("--search", "over").out().contains(mild));
        assertFalse(lines("--practice").out().contains(hot));
        assertTrue(lines("--units", "f").out().contains("°F"));
    }

    @Test
    void scriptsGetALineABatch() throws Exception {
        demo.record(Plan.dark(33.2));
        Said said = lines("--json");
        assertEquals(1, said.out().lines().count(), said.out());
        assertTrue(said.out().startsWith("{\"session\":\"2026-01-05-180000-dark\","), said.out());
        assertTrue(said.out().contains("\"end\":\"over-range\",\"looks\":[]}"), said.out());
    }

    @Test
    void aDamagedBatchIsShownAndTold() throws Exception {
        Path file = demo.record(Plan.dark(32));
        Files.writeString(file, "spoilt\n");
        Said said = lines();
        assertEquals(1, said.exit());
        assertTrue(said.out().contains("cannot be read"), said.out());
        assertTrue(said.err().contains("The first line cannot be used"), said.err());
    }

    @Test
    void aBatchGoesIntoTheBinAndComesBack() throws Exception {
        Path file = demo.record(Plan.dark(32));
        String name = SessionFiles.name(file);
        Said put = notebook("bin", name);
        assertEquals(0, put.exit(), put.err());
        assertTrue(put.out().contains("monitor/run notebook restore " + name), put.out());
        assertFalse(Files.exists(file));
        assertTrue(notebook("bin").out().startsWith(name + "  1 file"));
        assertTrue(lines().out().contains("No batch is recorded yet."));
        assertEquals(0, notebook("restore", name).exit());
        assertTrue(Files.exists(file));
        notebook("restore", name)
                .refuses(4, "There is no " + name + " in the bin.", "Nothing was done.", "The bin is empty.");
    }

    @Test
    void theBinIsEmptiedAfterOneQuestionOnly() throws Exception {
        demo.record(Plan.dark(32));
        notebook("bin", "last");
        notebook("empty-bin").refuses(2, "There is no terminal", "Nothing was deleted.", "--yes");
        Said no = Said.withInput("no\n", "notebook", "empty-bin", "--ask", "--data", data.toString());
        assertEquals(1, no.exit());
        assertTrue(no.out().contains("Delete this batch for good?"), no.out());
        assertEquals(1, demo.bin().list().size());
        Said yes = Said.withInput("yes\n", "notebook", "empty-bin", "--ask", "--data", data.toString());
        assertEquals(0, yes.exit());
        assertEquals(0, demo.bin().list().size());
    }

    @Test
    void whatCannotBeUsedIsSaid() {
        lines("--sort", "size").refuses(2, "--sort was \"size\"", "Nothing was done.", "when, chocolate");
        lines("--end", "good").refuses(2, "--end was \"good\"", "Nothing was done.", "in-range");
        lines("--looks", "maybe").refuses(2, "--looks was \"maybe\"", "Nothing was done.", "yes, no, due");
        notebook("bin", "nosuch").refuses(4, "There is no session nosuch.", "Nothing", "Look in ");
    }

    @Test
    void itSaysOfMarkedAndFineBarsWhatLearnSays() throws Exception {
        for (int i = 0; i < 5; i++) {
            DemoBatches.look(demo.record(Plan.dark(31.8 + 0.1 * i)), 24, Bloom.NONE, Snap.CLEAN);
            DemoBatches.look(demo.record(Plan.dark(33 + 0.3 * i)), 24, Bloom.STREAKS, Snap.SOFT);
        }
        demo.record(Plan.dark(30.4).of("milk"));
        List<String> learned = Said.by("learn", "--data", data.toString())
                .out()
                .lines()
                .filter(line -> line.contains("marked bars held against fine ones")
                        || line.startsWith("Goes with marks")
                        || line.startsWith("It goes with marks")
                        || line.startsWith("One thing to try"))
                .toList();
        assertTrue(learned.size() >= 4, learned.toString());
        String out = lines().out();
        learned.forEach(line -> assertTrue(out.contains(line), line + " is missing in " + out));
        // By all of them, whichever rows are shown; silent beside rows of another chocolate.
        assertTrue(lines("--search", "streaks").out().contains("5 marked, 5 fine."));
        assertFalse(lines("--chocolate", "milk").out().contains("marked bars held against fine ones"));
    }
}
