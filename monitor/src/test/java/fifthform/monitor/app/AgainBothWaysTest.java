package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.store.SessionFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A batch made from the bars of another points back to it, and that one forward, wherever either is shown. */
class AgainBothWaysTest {
    @TempDir
    Path data;

    private String failed;
    private String again;

    @BeforeEach
    void record() throws Exception {
        DemoBatches demo = new DemoBatches(data);
        failed = SessionFiles.name(demo.record(Plan.dark(34.2)));
        demo.record(Plan.dark(32));
        Holding hold = new Holding(Duration.ofMinutes(30), Holding.Warmth.BOX);
        again = SessionFiles.name(demo.record(Plan.dark(31.6).begun(new Beginning.Again(failed), Optional.of(hold))));
    }

    private Said run(String... words) {
        String[] all = new String[words.length + 1];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "--data=" + data;
        return Said.by(all);
    }

    @Test
    void theNotebookSaysBothAndSoDoItsAnswersToScripts() {
        String table = run("notebook", "--screen", "lines").out();
        assertTrue(table.contains("Dark, about 70 %, again"), table);
        assertTrue(table.contains(again + " was made again from the bars of " + failed + "."), table);
        assertTrue(table.contains(failed + " was tempered again in " + again + "."), table);

        String json = run("notebook", "--json", "--sort", "when", "--reverse").out();
        String[] lines = json.split("\\R");
        assertTrue(
                lines[0].contains("\"begins\":\"whole\"") && lines[0].contains("\"again_in\":[\"" + again + "\"]"),
                json);
        assertFalse(lines[1].contains("again"), json);
        assertTrue(
                lines[2].contains("\"begins\":\"again\"") && lines[2].contains("\"again\":\"" + failed + "\""), json);
        assertTrue(lines[2].contains("\"hold_min\":30,\"warm_by\":\"box\""), json);
    }

    /** The other end counts even where the filter leaves it out. */
    @Test
    void aFilterDoesNotCutTheLink() {
        String table = run("notebook", "--screen", "lines", "--search", failed + " melt")
                .out();
        assertTrue(table.contains(failed + " was tempered again in " + again + "."), table);
    }

    @Test
    void theSummaryForScriptsHasBoth() {
        String first = run("analyse", "--summary", failed).out();
        assertTrue(first.contains("\"begins\":\"whole\",\"again_in\":[\"" + again + "\"]}"), first);
        String second = run("analyse", "--summary", again).out();
        assertTrue(second.contains("\"begins\":\"again\",\"again\":\"" + failed + "\""), second);
        assertTrue(second.contains("\"hold\":{\"planned_s\":1800,\"warm_by\":\"box\",\"held_s\":"), second);
    }

    @Test
    void replayAndReportNameBoth() throws Exception {
        String first = run("replay", failed, "--screen", "none").out();
        assertTrue(first.contains("Its bars were tempered again in " + again + "."), first);
        String second = run("replay", again, "--screen", "none").out();
        assertTrue(second.contains("Made again from the bars of " + failed + "."), second);
        assertTrue(report(failed).contains("tempered again in " + again), report(failed));
        assertTrue(report(again).contains("again, of " + failed), report(again));
        assertTrue(
                report(again).contains("The planned hold was not begun")
                        || report(again).contains("Held for "),
                report(again));
    }

    /** The words of its page, line breaks as spaces. */
    private String report(String session) throws Exception {
        Path file = data.resolve(session + "-page.pdf");
        assertEquals(
                0,
                run("export", session, "--as", "pdf", "--force", "--out", file.toString())
                        .exit());
        return new PdfTextExtractor(new PdfReader(Files.readAllBytes(file)))
                .getTextFromPage(1)
                .replaceAll("\\s+", " ");
    }
}
