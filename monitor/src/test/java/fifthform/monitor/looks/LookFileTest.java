package fifthform.monitor.looks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.BarPlace;
import fifthform.curves.learning.Bloom;
import fifthform.curves.learning.Gloss;
import fifthform.curves.learning.Kept;
import fifthform.curves.learning.Release;
import fifthform.curves.learning.Snap;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Looks are only ever added, and a spoilt line costs itself only. */
class LookFileTest {
    private static final Instant AT = Instant.parse("2026-02-03T10:00:00Z");
    private static final BarLook FULL = new BarLook(
            24.5,
            List.of(Bloom.VEIL, Bloom.OILY),
            List.of(BarPlace.EDGES, BarPlace.MOULD_SIDE),
            Optional.of(Snap.SOFT),
            Optional.of(Gloss.SATIN),
            Optional.of(Release.SOME_STUCK),
            Optional.of(Kept.FRIDGE),
            Sureness.UNSURE);
    private static final BarLook BARE = new BarLook(
            168,
            List.of(Bloom.NONE),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Sureness.SURE);

    @TempDir
    Path folder;

    private LookFile looks;

    @BeforeEach
    void begin() {
        looks = LookFile.beside(folder.resolve("one.tempering.jsonl"), "one");
    }

    @Test
    void whatIsKeptIsReadAgain() throws Exception {
        KeptLook first = looks.add(AT, FULL, List.of("a \"b\".jpg"), Optional.of("line\nand č"));
        KeptLook second = looks.add(AT.plusSeconds(5), BARE, List.of(), Optional.empty());
        LookFile.Loaded loaded = looks.load();
        assertEquals(List.of(first, second), loaded.looks());
        assertEquals(List.of(), loaded.problems());
        assertEquals(2, Files.readAllLines(looks.path()).size());
    }

    @Test
    void noFileIsNoLookAndNoProblem() {
        assertEquals(new LookFile.Loaded(List.of(), java.util.Set.of(), List.of()), looks.load());
    }

    /** Cut off anywhere in the second line, the first stands, what comes after is readable, and the torn piece stays. */
    @Test
    void tornAtEveryByteTheRestStandsAndGoesOn() throws Exception {
        KeptLook first = looks.add(AT, FULL, List.of(), Optional.empty());
        int whole = (int) Files.size(looks.path());
        looks.add(AT, BARE, List.of(), Optional.of("č"));
        byte[] all = Files.readAllBytes(looks.path());
        for (int cut = whole; cut < all.length; cut++) {
            byte[] torn = Arrays.copyOf(all, cut);
            Files.write(looks.path(), torn);
            KeptLook third = looks.add(AT, BARE, List.of(), Optional.empty());
            LookFile.Loaded loaded = looks.load();
            assertEquals(first, loaded.looks().get(0), "cut at " + cut);
            assertEquals(third, loaded.looks().get(loaded.looks().size() - 1), "cut at " + cut);
            // All of it, or all but its line end, is whole.
            boolean piece = cut > whole && cut < all.length - 1;
            assertEquals(piece ? 1 : 0, loaded.problems().size(), "cut at " + cut);
            byte[] kept = Files.readAllBytes(looks.path());
            assertTrue(Arrays.equals(torn, Arrays.copyOf(kept, cut)), "cut at " + cut);
        }
    }

    @Test
    void aByteThatIsNoTextCostsItsLineOnly() throws Exception {
        looks.add(AT, BARE, List.of(), Optional.empty());
        Files.write(looks.path(), new byte[] {(byte) 0xff, (byte) 0xfe, '\n'}, StandardOpenOption.APPEND);
        KeptLook last = looks.add(AT, FULL, List.of(), Optional.empty());
        assertEquals(3, last.number());
        assertEquals(2, looks.load().looks().size());
        assertEquals(1, looks.load().problems().size());
    }

    @Test
    void whatAnotherSessionOrANewerProgramWroteIsPassedOverAndSaid() throws Exception {
        looks.add(AT, BARE, List.of(), Optional.empty());
        String other = Files.readString(looks.path()).replace("\"one\"", "\"two\"");
        String newer = Files.readString(looks.path()).replace("\"k\":\"look\"", "\"k\":\"taste\"");
        String word = Files.readString(looks.path()).replace("\"none\"", "\"glitter\"");
        Files.writeString(looks.path(), other + newer + word, StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        LookFile.Loaded loaded = looks.load();
        assertEquals(1, loaded.looks().size());
        assertEquals(3, loaded.problems().size());
        assertTrue(loaded.problems().get(0).what().contains("it is of another session, two"));
        assertTrue(loaded.problems().get(1).what().contains("is of a newer program"));
        assertTrue(loaded.problems().get(2).what().contains("\"glitter\" is not known"));
    }

    @Test
    void aLineIsNamedAsAnEditorNumbersIt() throws Exception {
        looks.add(AT, BARE, List.of(), Optional.empty());
        Files.writeString(looks.path(), "\n\nno look\n", StandardOpenOption.APPEND);
        assertEquals(looks.path() + ", line 4", looks.load().problems().get(0).where());
    }

    @Test
    void whatIsTakenBackStaysInTheFile() throws Exception {
        KeptLook first = looks.add(AT, FULL, List.of(), Optional.empty());
        looks.add(AT, BARE, List.of(), Optional.empty());
        looks.takeBack(first, AT);
        assertEquals(
                List.of(2), looks.load().looks().stream().map(KeptLook::number).toList());
        assertEquals(3, Files.readAllLines(looks.path()).size());
        assertEquals(4, looks.add(AT, FULL, List.of(), Optional.empty()).number());
    }

    /** Several programs at once: every look is kept, and each has a number of its own, or none could be taken back. */
    @Test
    void fourProgramsAtOnceNumberTheirLooksApart() throws Exception {
        List<Process> programs = new ArrayList<>();
        for (int i = 0; i < 4; i++)
            programs.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Looker.class.getName(),
                            folder.toString())
                    .inheritIO()
                    .start());
        for (Process program : programs) assertEquals(0, program.waitFor());
        assertEquals(
                IntStream.rangeClosed(1, 4 * Looker.LOOKS).boxed().toList(),
                looks.load().looks().stream().map(KeptLook::number).toList());
    }

    /** Another program that looks at the same bars. */
    static final class Looker {
        private static final int LOOKS = 50;

        private Looker() {}

        public static void main(String[] arguments) throws Exception {
            LookFile looks = LookFile.beside(Path.of(arguments[0], "one.tempering.jsonl"), "one");
            for (int i = 0; i < LOOKS; i++) looks.add(AT, BARE, List.of(), Optional.empty());
        }
    }
}
