package fifthform.monitor.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Snap;
import fifthform.monitor.looks.LookTime;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.notebook.RowFilter.Kinds;
import fifthform.monitor.notebook.RowFilter.Looks;
import fifthform.monitor.settings.Units;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Twelve invented batches, asked in every way. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RowsTogetherTest {
    @TempDir
    static Path data;

    private List<BatchRow> rows = List.of();

    /** Ten real ones, five of them too hot with streaks later; a milk one; one of practice. */
    @BeforeAll
    void record() throws Exception {
        DemoBatches demo = new DemoBatches(data);
        for (int i = 0; i < 5; i++) {
            Path good = demo.record(Plan.dark(32.0).in("demo glass"));
            DemoBatches.look(good, 24, Bloom.NONE, Snap.CLEAN);
            DemoBatches.look(good, 170, Bloom.NONE, Snap.CLEAN);
            DemoBatches.look(demo.record(Plan.dark(33.2)), 26, Bloom.STREAKS, Snap.SOFT);
        }
        demo.record(Plan.dark(30.5).of("milk"));
        demo.record(Plan.dark(32).practised());
        Notebook notebook = demo.notebook();
        notebook.open();
        notebook.readOn(row -> {}, () -> false);
        rows = notebook.open();
    }

    private List<BatchRow> by(RowFilter filter) {
        return filter.of(rows, Units.CELSIUS, Instant.parse("2026-01-30T12:00:00Z"));
    }

    @Test
    void eachFilterTakesItsOwn() {
        assertEquals(11, by(RowFilter.USUAL).size());
        assertEquals(1, by(RowFilter.USUAL.withKinds(Kinds.PRACTICE)).size());
        assertEquals(12, by(RowFilter.USUAL.withKinds(Kinds.BOTH)).size());
        assertEquals(1, by(RowFilter.USUAL.withChocolate(Optional.of("milk"))).size());
        assertEquals(5, by(RowFilter.USUAL.withBowl(Optional.of("Demo Glass"))).size());
        assertEquals(
                5, by(RowFilter.USUAL.withEnd(Optional.of(Ended.OVER_RANGE))).size());
        assertEquals(10, by(RowFilter.USUAL.withLooks(Looks.LOOKED)).size());
        assertEquals(1, by(RowFilter.USUAL.withLooks(Looks.NOT_LOOKED)).size());
    }

    @Test
    void everyWordOfASearchMustStandInTheRow() {
        assertEquals(5, by(RowFilter.USUAL.withSearch("streaks")).size());
        assertEquals(5, by(RowFilter.USUAL.withSearch("  FINE glass ")).size());
        assertEquals(0, by(RowFilter.USUAL.withSearch("streaks glass")).size());
        assertEquals(10, by(RowFilter.USUAL.withSearch("demo-bars.jpg")).size());
        assertEquals(11, by(RowFilter.USUAL.withSearch("2026-01")).size());
        assertEquals(1, by(RowFilter.USUAL.withSearch("milk 2026-01-25")).size());
    }

    @Test
    void theOrdersAreWhatTheySay() {
        List<BatchRow> byPeak = rows.stream().sorted(RowOrder.PEAK.comparator()).toList();
        for (int i = 1; i < byPeak.size(); i++)
            assertTrue(byPeak.get(i - 1).figures().peakCelsius().orElse(0)
                    <= byPeak.get(i).figures().peakCelsius().orElse(0));
        assertEquals(
                "milk",
                rows.stream()
                        .sorted(RowOrder.CHOCOLATE.comparator().reversed())
                        .findFirst()
                        .orElseThrow()
                        .chocolateId());
        List<BatchRow> byEnd = rows.stream().sorted(RowOrder.END.comparator()).toList();
        assertEquals(Ended.OVER_RANGE, byEnd.get(0).end());
    }

    @Test
    void theSentencesCount() {
        List<String> said = Together.sentences(rows);
        assertTrue(said.get(0).startsWith("Of 11 batches 6 ended in range, and 5 rose above"), said.toString());
        assertTrue(
                said.contains(
                        "Of 5 that rose above the warning temperature 5 showed marks of lost temper later; of 5 that"
                                + " stayed below it, 0."),
                said.toString());
        assertTrue(
                said.contains("In demo steel, 5 of 6 rose above the warning temperature; in other bowls 0 of 5."),
                said.toString());
        assertEquals("Counts, not causes.", said.get(said.size() - 1));
    }

    @Test
    void belowTheStatedCountTheyAreSilent() {
        assertEquals(
                List.of("Too few finished batches to say anything together; it takes 5."),
                Together.sentences(rows.subList(0, 5)));
        // Practice never stands among real ones.
        assertEquals(
                List.of("Too few finished batches to say anything together; it takes 5."),
                Together.sentences(by(RowFilter.USUAL.withKinds(Kinds.PRACTICE))));
        // Five looked at on one side only: the sentence about heat is not said.
        List<BatchRow> fewer = rows.stream()
                .filter(row ->
                        !row.bowl().equals("demo glass") || row.start().isAfter(Instant.parse("2026-01-06T00:00:00Z")))
                .toList();
        assertTrue(Together.sentences(fewer).stream().noneMatch(s -> s.contains("later; of")));
    }

    @Test
    void remindersComeAfterADayTwoAWeekAndFourUntilLookedAt() {
        BatchRow streaky =
                rows.stream().filter(row -> row.looks().size() == 1).findFirst().orElseThrow();
        BatchRow twice =
                rows.stream().filter(row -> row.looks().size() == 2).findFirst().orElseThrow();
        BatchRow never = rows.stream()
                .filter(row -> row.looks().isEmpty() && row.kind() == BatchKind.REAL)
                .findFirst()
                .orElseThrow();
        BatchRow practice = rows.stream()
                .filter(row -> row.kind() == BatchKind.PRACTICE)
                .findFirst()
                .orElseThrow();
        assertEquals(Optional.empty(), due(never, 23));
        assertEquals(Optional.of(LookTime.DAY), due(never, 25));
        assertEquals(Optional.of(LookTime.WEEK), due(never, 7 * 24 + 1));
        assertEquals(Optional.empty(), due(never, 24 * 70));
        assertEquals(Optional.of(LookTime.TWO_DAYS), due(never, 49));
        assertEquals(Optional.of(LookTime.FOUR_WEEKS), due(never, 28 * 24 + 1));
        assertEquals(Optional.empty(), due(streaky, 30));
        assertEquals(Optional.of(LookTime.WEEK), due(streaky, 7 * 24 + 1));
        assertEquals(Optional.empty(), due(twice, 8 * 24));
        assertEquals(Optional.empty(), due(practice, 25));
        assertTrue(Reminders.lines(rows, never.ended().plus(Duration.ofHours(25)))
                .get(0)
                .contains("2026-01-25 milk"));
    }

    private static Optional<LookTime> due(BatchRow row, int hours) {
        return Reminders.due(row, row.ended().plus(Duration.ofHours(hours)));
    }

    @Test
    void comparedBatchesAreLaidWhereEachWasColdest() {
        List<BatchRow> two = List.of(rows.get(2), rows.get(3));
        Comparison comparison = Comparison.of(two, BatchRow::curve, Units.FAHRENHEIT);
        for (Comparison.Laid laid : comparison.batches()) {
            assertTrue(laid.isMatched());
            assertEquals(
                    -laid.curve().troughSeconds().orElseThrow(),
                    laid.seconds(0),
                    laid.curve().stepSeconds());
        }
        List<String> peaks = comparison.figures().stream()
                .filter(line -> line.get(0).equals("Peak after the cool"))
                .findFirst()
                .orElseThrow();
        assertEquals(3, peaks.size());
        assertTrue(peaks.get(1).endsWith("°F"), peaks.toString());
    }

    @Test
    void whoHasPractisedOnlySeesPractice(@TempDir Path other) throws Exception {
        DemoBatches demo = new DemoBatches(other);
        demo.record(Plan.dark(32).practised());
        NotebookDesk desk = new NotebookDesk(demo.notebook(), demo.bin(), Units.CELSIUS, Instant::now);
        desk.open();
        List<BatchRow> read = new ArrayList<>();
        desk.readOn(read::add, () -> false);
        desk.take(read);
        assertEquals(1, desk.shown().size());
        desk.ask(RowFilter.USUAL.withSearch("nothing like it"));
        assertEquals(0, desk.shown().size());
        desk.askForAll();
        assertEquals(1, desk.shown().size());
    }

    @Test
    void atMostThreeAreCompared() {
        DemoBatches demo = new DemoBatches(data);
        NotebookDesk desk = new NotebookDesk(
                demo.notebook(), demo.bin(), Units.CELSIUS, () -> Instant.parse("2026-02-01T00:00:00Z"));
        desk.open();
        List<BatchRow> shown = desk.shown();
        for (int i = 0; i < 4; i++) desk.compare(shown.get(i));
        assertEquals(3, desk.comparison().batches().size());
        assertTrue(desk.said().startsWith("Three are compared already"), desk.said());
        desk.compare(shown.get(1));
        assertEquals(
                List.of(0, -1, 1),
                List.of(desk.place(shown.get(0)), desk.place(shown.get(1)), desk.place(shown.get(2))));
    }
}
