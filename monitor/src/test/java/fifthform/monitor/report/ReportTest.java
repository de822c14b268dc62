package fifthform.monitor.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import fifthform.monitor.chart.Paper;
import fifthform.monitor.chart.ReportPdf;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.replay.CauseFindings;
import fifthform.monitor.replay.Recording;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.settings.Units;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page is made of its session and of the time that is handed in, and of nothing else. */
class ReportTest {
    private static final Instant HANDED = Instant.parse("2031-05-06T07:08:00Z");

    @TempDir
    Path data;

    @Test
    void theSameSessionAtTheSameTimeIsTheSamePage() throws Exception {
        Path session = new DemoBatches(data).record(Plan.dark(32));
        PdfReader one = page(session, HANDED);
        PdfReader other = page(session, HANDED);
        assertEquals(words(one), words(other));
        assertEquals(one.getInfo(), other.getInfo());
        assertTrue(words(one).contains("6 May 2031"), words(one));
        assertTrue(
                one.getInfo().get("CreationDate").startsWith("D:20310506070800"),
                one.getInfo().toString());
        assertNotEquals(words(one), words(page(session, HANDED.plusSeconds(86_400))));
    }

    private static String words(PdfReader page) throws Exception {
        return new PdfTextExtractor(page).getTextFromPage(1);
    }

    private static PdfReader page(Path session, Instant now) throws Exception {
        Recording recording = Recording.read(session).fold(r -> r, problems -> {
            throw new AssertionError(problems);
        });
        CauseFindings causes = new CauseFindings(recording, Units.CELSIUS);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ReplayDesk desk = new ReplayDesk(recording, Units.CELSIUS, causes, causes, () -> now)) {
            desk.computeAll();
            ReportPdf.write(new Report(desk).sheet(), Paper.A4, bytes);
        }
        return new PdfReader(bytes.toByteArray());
    }
}
