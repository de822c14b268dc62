package fifthform.monitor.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Snap;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.SessionFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sessions become rows, and the index makes them the same rows again. */
class NotebookTest {
    @TempDir
    Path data;

    private DemoBatches demo;

    @BeforeEach
    void begin() {
        demo = new DemoBatches(data);
    }

    /** Opens as a fresh program would; answers with the rows, and puts the names of those that were read into {@code read}. */
    private List<BatchRow> opened(List<String> read) throws Exception {
        Notebook notebook = demo.notebook();
        notebook.open();
        assertTrue(notebook.readOn(row -> read.add(row.name()), () -> false).isEmpty());
        return notebook.open();
    }

    @Test
    void aRowSaysWhatTheBatchWas() throws Exception {
        Path file = demo.record(Plan.dark(32.1));
        DemoBatches.look(file, 24, Bloom.NONE, Snap.CLEAN);
        BatchRow row = opened(new ArrayList<>()).get(0);
        assertEquals("2026-01-05 18:00", RowWords.when(row));
        assertEquals("demo steel", row.bowl());
        assertEquals("800 g", RowWords.amount(row));
        assertEquals("30", RowWords.minutes(row));
        assertEquals(32.1, row.figures().peakCelsius().orElseThrow(), 0.15);
        assertEquals(Ended.IN_RANGE, row.end());
        assertEquals(Condition.WHOLE, row.condition());
        assertEquals("1 d: fine", RowWords.looks(row));
        assertEquals(List.of("demo-bars.jpg"), row.photos());
    }

    @Test
    void theCurveIsTheBatchAndKnowsWhereItWasColdest() throws Exception {
        demo.record(Plan.dark(32.1));
        SmallCurve curve = opened(new ArrayList<>()).get(0).curve();
        assertEquals(BatchReader.SMALL, curve.points());
        assertEquals(48, curve.celsius(2), 0.5);
        // Two minutes of melt, six of cooling, then twelve at the coldest.
        double trough = curve.troughSeconds().orElseThrow();
        assertTrue(trough >= 420 && trough <= 1200, "was " + trough);
        assertEquals(27.6, curve.celsius((int) (1000 / curve.stepSeconds())), 0.2);
    }

    @Test
    void whatWasReadOnceIsKnownTheNextTimeToTheLastDigit() throws Exception {
        DemoBatches.look(demo.record(Plan.dark(32.1)), 30, Bloom.STREAKS, Snap.SOFT);
        demo.record(Plan.dark(35.5).practised());
        Path failed = demo.record(Plan.dark(33).cutOff());
        Holding hold = new Holding(Duration.ofMinutes(45), Holding.Warmth.AIR);
        demo.record(Plan.dark(32).begun(new Beginning.Again(SessionFiles.name(failed)), Optional.of(hold)));
        demo.record(Plan.dark(32).begun(new Beginning.InTemper(), Optional.empty()));
        List<String> first = new ArrayList<>();
        List<BatchRow> rows = opened(first);
        assertEquals(5, first.size());
        assertEquals("Dark, about 70 %, in temper", RowWords.chocolate(rows.get(0)));
        assertEquals("45 min, by air", RowWords.hold(rows.get(1)));
        assertEquals(List.of(rows.get(1).name()), Links.madeFrom(rows.get(2), rows));
        List<String> second = new ArrayList<>();
        List<BatchRow> again = opened(second);
        assertEquals(List.of(), second);
        // The index keeps milliseconds; demo batches begin and end at whole seconds.
        assertEquals(rows, again);
    }

    @Test
    void onlyWhatChangedIsReadAnew() throws Exception {
        Path first = demo.record(Plan.dark(32));
        demo.record(Plan.dark(32));
        opened(new ArrayList<>());
        DemoBatches.look(first, 26, Bloom.VEIL, Snap.CLEAN);
        List<String> read = new ArrayList<>();
        List<BatchRow> rows = opened(read);
        assertEquals(List.of(SessionFiles.name(first)), read);
        assertEquals(1, rows.get(1).looks().size());
        Files.delete(first);
        assertEquals(1, opened(read).size());
        assertEquals(1, read.size());
    }

    @Test
    void theIndexMayBeDeletedOrSpoilt() throws Exception {
        for (int i = 0; i < 4; i++) demo.record(Plan.dark(31.8 + i));
        List<BatchRow> rows = opened(new ArrayList<>());
        String text = Files.readString(demo.index());

        Files.delete(demo.index());
        assertEquals(rows, opened(new ArrayList<>()));

        // One digit of a figure: still a row, and no longer what was written.
        List<String> read = new ArrayList<>();
        Files.writeString(demo.index(), text.replaceFirst("demo steel", "dema steel"));
        assertEquals(rows, opened(read));
        assertEquals(1, read.size());

        // Torn in the middle of a line, a byte that is no UTF-8, and a stranger's line.
        read.clear();
        byte[] torn = text.substring(0, text.length() - 200).getBytes(StandardCharsets.UTF_8);
        torn[torn.length / 2] = (byte) 0xFF;
        Files.write(demo.index(), torn);
        assertEquals(rows, opened(read));
        assertEquals(2, read.size());

        Files.writeString(demo.index(), "something else\n");
        assertEquals(rows, opened(new ArrayList<>()));
        assertEquals(text.length(), Files.readString(demo.index()).length());
    }

    @Test
    void aDamagedSessionIsARowThatSaysSo() throws Exception {
        Path headless = demo.record(Plan.dark(32));
        Files.writeString(headless, "no header\n" + Files.readString(headless));
        Path dented = demo.record(Plan.dark(32));
        String text = Files.readString(dented);
        int middle = text.indexOf("{\"k\":\"r\"", text.length() / 2);
        Files.writeString(dented, text.substring(0, middle) + "garbage" + text.substring(middle + 12));
        Path empty = Files.createFile(demo.sessions().resolve("2026-02-01-120000-milk" + SessionFiles.ENDING));

        List<BatchRow> rows = opened(new ArrayList<>());
        BatchRow nothing = row(rows, empty);
        assertEquals(Condition.UNREADABLE, nothing.condition());
        assertEquals("cannot be read", RowWords.end(nothing));
        assertEquals("milk", nothing.chocolate());
        assertTrue(nothing.trouble().contains("The file is empty"), nothing.trouble());
        assertEquals(Condition.UNREADABLE, row(rows, headless).condition());
        BatchRow part = row(rows, dented);
        assertEquals(Condition.IN_PART, part.condition());
        assertEquals(32, part.figures().peakCelsius().orElseThrow(), 0.2);
        assertTrue(RowWords.end(part).startsWith("damaged in part; in range"), RowWords.end(part));
        // What cannot be read may have been a real batch: no filter for kinds hides it.
        assertTrue(RowFilter.USUAL.of(rows, Units.CELSIUS, DemoBatches.FIRST).contains(nothing));
    }

    @Test
    void aBatchThatWasCutOffGoesThroughTheEngineOnceMore() throws Exception {
        Path whole = demo.record(Plan.dark(32.9));
        Path cut = demo.record(Plan.dark(32.9).cutOff());
        List<BatchRow> rows = opened(new ArrayList<>());
        assertEquals(Condition.CUT_OFF, row(rows, cut).condition());
        assertEquals(
                row(rows, whole).figures().peakCelsius().orElseThrow(),
                row(rows, cut).figures().peakCelsius().orElseThrow(),
                0.001);
        assertEquals(row(rows, whole).end(), row(rows, cut).end());
    }

    @Test
    void beforeItIsReadARowTellsWhatItsNameTells() throws Exception {
        demo.record(Plan.dark(32));
        Notebook notebook = demo.notebook();
        BatchRow row = notebook.open().get(0);
        assertEquals(1, notebook.unread());
        assertEquals(Condition.UNREAD, row.condition());
        assertEquals("dark", row.chocolate());
        assertFalse(row.counts());
        // Broken off before the first: nothing is lost, nothing is kept.
        notebook.readOn(read -> {}, () -> true);
        assertEquals(1, notebook.unread());
    }

    private static BatchRow row(List<BatchRow> rows, Path file) {
        return rows.stream().filter(row -> row.file().equals(file)).findFirst().orElseThrow();
    }
}
