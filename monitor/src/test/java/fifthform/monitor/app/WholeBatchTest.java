package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Origin;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** One whole practice batch through the real program: simulated bowl, bytes, journal, and the same again afterwards. */
@Timeout(300)
class WholeBatchTest {
    @TempDir
    static Path home;

    private static Program watch;
    private static Path file;

    @BeforeAll
    static void temperABatch() throws Exception {
        watch = Program.ran(
                home, "watch", "--probe", "practice", "--screen", "none", "--speed", "max", "--bytes", "--units", "f");
        file = watch.sessions().get(0);
    }

    @AfterAll
    static void end() {
        watch.close();
    }

    @Test
    void endsWithOneSessionAndOneLineOnHowItWent() throws Exception {
        assertEquals(0, watch.exit(), watch.err());
        List<String> lines = watch.out().lines().toList();
        assertEquals(3, lines.size(), watch.out());
        assertTrue(lines.get(0).startsWith("Practice batch (simulated), Dark"), lines.get(0));
        assertTrue(lines.get(0).contains("°F"), lines.get(0));
        assertTrue(lines.get(1).startsWith("Crystals, the last word: "), lines.get(1));
        assertEquals("Kept in " + file, lines.get(2));
        assertEquals(1, watch.sessions().size());
        assertEquals("", watch.err());
    }

    @Test
    void theSessionSaysThatNothingWasMeasuredAndHoldsTheWholeWay() {
        Recording kept = Recording.of(file);
        assertEquals(Origin.SIMULATED, kept.session().header().setup().origin());
        assertTrue(Program.text(file).lines().findFirst().orElseThrow().contains("\"origin\":\"simulated\""));
        assertTrue(kept.session().isClosed());
        assertEquals(List.of(), kept.session().problems());
        kept.hasUnbrokenNumbers();
        String closing = line("\"k\":\"z\"");
        for (String phase : List.of("melt", "cool", "seed", "rewarm", "work"))
            assertTrue(closing.contains("{\"name\":\"" + phase + "\""), closing);
        assertTrue(closing.contains("\"verdict\":\"in-range\""), closing);
        assertTrue(kept.was("cue-given") && kept.was("turned"));
    }

    @Test
    void replaySaysTheSameToTheByte() {
        Said said = Said.by("replay", "--screen", "none", file.toString());
        assertEquals(0, said.exit(), said.err());
        long told = Recording.of(file).session().told().count();
        assertTrue(said.out().contains("Of the bowl: this bowl coasts about "), said.out());
        assertTrue(
                said.out().contains("Told then and computed now: the same " + told + " events, to the byte."),
                said.out());
        assertEquals(
                said.out().lines().findFirst(),
                Said.by(
                                "replay",
                                "--screen",
                                "none",
                                "last",
                                "--data",
                                home.resolve("data/fifthform").toString())
                        .out()
                        .lines()
                        .findFirst());
    }

    @Test
    void analysisOfTheSessionSaysWhatTheSessionSaysOfItself() {
        Said said = Said.by("analyse", "--summary", file.toString());
        assertEquals(0, said.exit(), said.err());
        assertEquals(summaryIn(line("\"k\":\"z\"")), summaryIn(said.out().strip()));
    }

    @Test
    void itsBytesAreWatchedAgainAsSimulated() throws Exception {
        Path bytes = file.resolveSibling(file.getFileName().toString().replace(".tempering.jsonl", ".bytes"));
        assertTrue(Files.size(bytes) > 10_000);
        Program again = Program.ran(
                home,
                "watch",
                "--probe",
                "file:" + bytes,
                "--screen",
                "none",
                "--speed",
                "max",
                "--record",
                home.resolve("again").toString());
        assertEquals(0, again.exit(), again.err());
        assertTrue(again.out().startsWith("Practice batch (simulated)"), again.out());
        assertFalse(again.out().contains("ended before the working range"), again.out());
    }

    private static String line(String part) {
        return Program.text(file)
                .lines()
                .filter(l -> l.contains(part))
                .findFirst()
                .orElseThrow();
    }

    private static String summaryIn(String line) {
        String rest = line.substring(line.indexOf("\"summary\":"));
        // What the bowl taught stands beside the summary in an analysis only.
        int bowl = rest.indexOf(",\"bowl\":");
        return bowl < 0 ? rest : rest.substring(0, bowl) + "}";
    }
}
