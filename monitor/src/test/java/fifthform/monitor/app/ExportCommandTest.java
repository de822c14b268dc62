package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import fifthform.curves.setup.ProbeId;
import fifthform.monitor.looks.LookCalendar;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.replay.NoteFile;
import fifthform.monitor.replay.Readings;
import fifthform.monitor.replay.Recording;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.SessionFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session as files for others; read back by libraries that did not write them. */
class ExportCommandTest {
    @TempDir
    Path folder;

    private Path session;
    private String name;

    @BeforeEach
    void copy() throws Exception {
        Path tape = GoldenSessionTest.tape("demo-own-way");
        Path sessions = Files.createDirectories(folder.resolve("sessions"));
        session = Files.copy(tape, sessions.resolve(tape.getFileName()));
        name = SessionFiles.name(session);
    }

    private Said export(String... more) {
        String[] all = new String[more.length + 3];
        all[0] = "export";
        all[1] = "--data=" + folder;
        all[2] = name;
        System.arraycopy(more, 0, all, 3, more.length);
        return Said.by(all);
    }

    private Recording recording() {
        return Recording.read(session).fold(r -> r, problems -> {
            throw new AssertionError(problems);
        });
    }

    /** RFC 4180 as Apache Commons CSV reads it. */
    private List<CSVRecord> rows(Path file) throws Exception {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            return rows.getRecords();
        }
    }

    @Test
    void theTableHasEveryReadingOfTheSession() throws Exception {
        Said said = export("--as", "csv");
        assertEquals(0, said.exit(), said.err());
        List<CSVRecord> rows = rows(session.resolveSibling(name + ".csv"));
        Recording recording = recording();
        int all = 0;
        for (ProbeId probe : recording.readings().keySet()) {
            Readings readings = recording.readings().get(probe);
            List<CSVRecord> theirs = rows.stream()
                    .filter(row -> !row.get(probe.name() + " (°C)").isEmpty())
                    .toList();
            assertEquals(readings.size(), theirs.size(), probe.name());
            for (int i = 0; i < readings.size(); i++) {
                assertEquals(
                        readings.celsius(i), Double.parseDouble(theirs.get(i).get(probe.name() + " (°C)")), 5e-5);
                assertEquals(
                        readings.nanos(i) / 1e9,
                        Double.parseDouble(theirs.get(i).get("elapsed (s)")),
                        5e-4);
                assertEquals(
                        recording.at(readings.nanos(i)),
                        OffsetDateTime.parse(theirs.get(i).get("time")).toInstant());
            }
            all += readings.size();
        }
        assertTrue(all > 1000, "readings: " + all);
        assertTrue(rows.size() > all, "what was done and told is there too");
    }

    @Test
    void whatASpreadsheetWouldReckonOutIsShown() throws Exception {
        NoteFile.beside(session, recording().header().session())
                .add(0, "=1+1, \"quoted\"", Instant.parse("2026-01-01T00:00:00Z"));
        export("--as", "csv");
        List<String> words = rows(session.resolveSibling(name + ".csv")).stream()
                .map(row -> row.get("words"))
                .toList();
        assertTrue(words.contains("'=1+1, \"quoted\""), words.toString());
    }

    @Test
    void theReportIsOnePageThatSaysWhatWasFound() throws Exception {
        NoteFile notes = NoteFile.beside(session, recording().header().session());
        for (int i = 0; i < 300; i++)
            notes.add(i * 1_000_000_000L, "demo note " + i, Instant.parse("2026-01-01T00:00:00Z"));
        Path file = folder.resolve("report.pdf");
        Said said = export("--as", "pdf", "--out", file.toString());
        assertEquals(0, said.exit(), said.err());
        PdfReader pdf = new PdfReader(Files.readAllBytes(file));
        assertEquals(1, pdf.getNumberOfPages());
        assertEquals(595.28, pdf.getPageSize(1).getWidth(), 0.01);
        String text = new PdfTextExtractor(pdf).getTextFromPage(1);
        for (String part : List.of(name, "What was found", "Phases", "Probe", "demo note 1", "more in the session"))
            assertTrue(text.contains(part), part + " in " + text);
        assertFalse(text.contains("demo note 299"), text);
    }

    @Test
    void aReportOnLetterPaperAndInFahrenheit() throws Exception {
        Path file = folder.resolve("report.pdf");
        Said said = export("--as", "pdf", "--paper", "letter", "--units", "f", "--out", file.toString());
        assertEquals(0, said.exit(), said.err());
        PdfReader pdf = new PdfReader(Files.readAllBytes(file));
        assertEquals(612, pdf.getPageSize(1).getWidth(), 0.01);
        assertTrue(new PdfTextExtractor(pdf).getTextFromPage(1).contains("°F"));
    }

    @Test
    void theDrawingIsXmlAndNeedsNoWindow() throws Exception {
        Said said = export("--as", "svg", "--from", "600", "--to", "1200");
        assertEquals(0, said.exit(), said.err());
        Path file = session.resolveSibling(name + "-600-to-1200-s.svg");
        var root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(file.toFile())
                .getDocumentElement();
        assertEquals("svg", root.getNodeName());
        assertTrue(root.getElementsByTagName("path").getLength() > 3);
    }

    /** Wherever it goes, it says that no chocolate was in the bowl. */
    @Test
    void practiceIsMarkedOnEveryKindOfFile() throws Exception {
        Path to = Files.createDirectories(folder.resolve("marked"));
        export("--out", to.toString());
        String table = Files.readString(to.resolve(name + ".csv"));
        assertTrue(
                table.contains("batch,\"practice, simulated: no chocolate was in the bowl\""), table.substring(0, 300));
        String drawing = Files.readString(to.resolve(name + ".svg"));
        assertEquals(2, drawing.split("\\(simulated\\)", -1).length - 1, "in its title and in its words");
        PdfReader page = new PdfReader(Files.readAllBytes(to.resolve(name + ".pdf")));
        assertTrue(new PdfTextExtractor(page).getTextFromPage(1).contains("simulated"));
        assertTrue(page.getInfo().get("Subject").contains("simulated"));
    }

    @Test
    void theLooksToComeAreTheSameCalendarAsReminders() throws Exception {
        Path fresh = new DemoBatches(folder).record(DemoBatches.Plan.dark(32));
        name = SessionFiles.name(fresh);
        // That batch is long ago: there is no look to come, and no empty file is left behind.
        export("--as", "ics").refuses(1, "older than four weeks", "Nothing was written", "Leave ics out");
        assertFalse(Files.exists(fresh.resolveSibling(name + ".ics")));

        LookCalendar looks =
                LookCalendar.of(JournalReader.read(fresh).fold(s -> s, problems -> null), Optional.empty());
        Path young = younger(fresh);
        name = SessionFiles.name(young);
        Said said = export("--as", "ics", "--out", folder.resolve("bars.ics").toString());
        // Its sums no longer agree, which is said; the calendar is made all the same.
        assertEquals(1, said.exit(), said.err());
        String ours = Files.readString(folder.resolve("bars.ics"));
        String theirs = Said.by("look", "--data=" + folder, name, "--reminders").out();
        assertEquals(theirs.replaceAll("DTSTAMP.*", ""), ours.replaceAll("DTSTAMP.*", ""));
        assertTrue(ours.contains("BEGIN:VEVENT"), ours);
        assertEquals(List.of(), looks.toCome(Instant.now()));
    }

    /** The same batch, as if it had just been recorded: only its first line and its last time are of now. */
    private Path younger(Path old) throws Exception {
        String text = Files.readString(old);
        Instant then = DemoBatches.FIRST;
        Instant now =
                Instant.now().truncatedTo(java.time.temporal.ChronoUnit.SECONDS).minusSeconds(7200);
        String day = then.toString().substring(0, 10);
        String young = text.replace(then.toString(), now.toString())
                .replaceAll(
                        day + "T1[0-9]:[0-9]{2}:[0-9.]+Z", now.plusSeconds(3600).toString());
        return Files.writeString(old.resolveSibling("young.tempering.jsonl"), young);
    }

    @Test
    void nothingIsOverwrittenUnasked() throws Exception {
        Path file = folder.resolve("mine.csv");
        Files.writeString(file, "mine");
        export("--as", "csv", "--out", file.toString()).refuses(4, "mine.csv", "left as it is", "--force");
        assertEquals("mine", Files.readString(file));
        assertEquals(
                0, export("--as", "csv", "--out", file.toString(), "--force").exit());
        assertTrue(Files.readString(file).startsWith("time,"));
    }

    @Test
    void allKindsGoIntoAFolder() throws Exception {
        Path to = Files.createDirectories(folder.resolve("out"));
        Said said = export("--out", to.toString());
        assertEquals(0, said.exit(), said.err());
        for (String ending : List.of(".csv", ".svg", ".pdf")) {
            assertTrue(Files.size(to.resolve(name + ending)) > 1000, ending);
            assertTrue(said.out().contains(name + ending), said.out());
        }
    }

    @Test
    void whatCannotBeDoneIsRefused() {
        export("--out", folder.resolve("one.file").toString())
                .refuses(2, "one.file", "Nothing was written", "--as pdf");
        export("--from", "100", "--to", "50").refuses(2, "100", "Nothing was written", "--to after --from");
        export("--from", "500000").refuses(2, "500000", "Nothing was written", "the session ends");
        export("--as", "csv", "--out", folder.resolve("none/there.csv").toString())
                .refuses(4, "there.csv", "there is no folder", "--out");
        export("--as", "doc").refuses(2, "--as was doc. Say one of: csv, svg, pdf, ics", "Nothing was done", "--help");
    }
}
