package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Origin;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a maker types with a bar in the other hand. */
class LookCommandTest {
    @TempDir
    Path home;

    private String session;
    private Path looks;

    @BeforeEach
    void aBatch() throws Exception {
        session = new BarSessions(home).batch(Origin.REAL, 31.6, 4);
        looks = home.resolve("sessions").resolve(session + ".looks.jsonl");
    }

    private Said look(String words) {
        return Said.by(arguments(words));
    }

    private String[] arguments(String words) {
        List<String> arguments = new ArrayList<>(List.of("look", session));
        if (!words.isEmpty()) arguments.addAll(List.of(words.split(" ")));
        arguments.addAll(List.of("--data", home.toString()));
        return arguments.toArray(String[]::new);
    }

    @Test
    void aLookIsKeptAndSaidBack() throws Exception {
        String before = Files.readString(home.resolve("sessions").resolve(session + ".tempering.jsonl"));
        Said said = look("--age 24h --bloom streaks,veil --place edges --snap clean --gloss dull");
        assertEquals(0, said.exit(), said.err());
        assertTrue(
                said.out().contains("Kept: look 1, 24 h after the batch: a grey or white veil, streaks (the edges)"));
        assertTrue(said.out().contains("marks of lost temper"), said.out());
        assertTrue(said.out().contains("What is in them stays in them"), said.out());
        assertTrue(said.out().contains("Look again after 2 days, 7 days and 4 weeks"), said.out());
        assertEquals(before, Files.readString(home.resolve("sessions").resolve(session + ".tempering.jsonl")));
    }

    @Test
    void aSecondLookStandsBehindTheFirstAndOneIsTakenBackByALaterLine() throws Exception {
        look("--age 24h --bloom none");
        String first = Files.readString(looks);
        look("--age 7d --bloom veil");
        assertTrue(look("--undo 2").out().startsWith("Taken back: look 2"));
        assertTrue(Files.readString(looks).startsWith(first));
        assertEquals(3, Files.readAllLines(looks).size());
        Said shown = look("--show");
        assertTrue(shown.out().contains("Look 1, 24 h"), shown.out());
        assertFalse(shown.out().contains("Look 2"), shown.out());
        look("--undo 2").refuses(2, "There is no look 2. It was taken back before.", "Nothing was done.", "Kept: 1.");
        assertTrue(look("--age 8d --bloom none").out().contains("look 4,"));
    }

    @Test
    void withoutAnAgeTheClockSaysHowOldTheBarsAre() throws Exception {
        assertEquals(0, look("--bloom none").exit());
        double hours = Double.parseDouble(Files.readString(looks).replaceAll("(?s).*\"age_h\":([\\d.]+).*", "$1"));
        assertTrue(hours > 24, "was " + hours);
    }

    @Test
    void scriptsGetTheLineAndItsSign() {
        Said said = look("--age 24h --bloom none --json");
        assertTrue(said.out().startsWith("{\"k\":\"look\",\"n\":1,\"session\":\"" + session + "\""), said.out());
        assertTrue(said.out().endsWith("\"sign\":\"clean\"}" + System.lineSeparator()), said.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    ''                                  | Nothing was said of the bars    | Nothing was kept. | --bloom none
                    --bloom grey                        | --bloom was "grey"              | Nothing was kept. | none, veil
                    --bloom none,veil                   | says none, and something as well | Nothing was kept. | one or the other
                    --place edges                       | no bloom was named              | Nothing was kept. | --bloom streaks
                    --bloom none --snap klean           | --snap was "klean"              | Nothing was kept. | Did you mean "clean"?
                    --bloom none --age soon             | --age was "soon"                | Nothing was kept. | 24h, 7d, 4w
                    --bloom none --age 999w             | --age was "999w"                | Nothing was kept. | 24h, 7d, 4w
                    --kept cool                         | Nothing was said of the bars    | Nothing was kept. | --bloom none
                    --undo 1                            | There is no look 1.             | Nothing was done. | None is kept.
                    --undo 1 --bloom none               | --undo stands alone             | Nothing was done. | look again
                    """)
    void whatCannotBeUsedIsSaid(String words, String what, String means, String toDo) {
        look(words).refuses(2, what, means, toDo);
        assertFalse(Files.exists(looks));
    }

    @Test
    void anUnknownSessionIsSaid() {
        Said.by("look", "nosuch", "--bloom", "none", "--data", home.toString())
                .refuses(4, "There is no session nosuch.", "Nothing", "Look in ");
    }

    @Test
    void aFolderInPlaceOfTheFileIsSaid() throws Exception {
        Files.createDirectory(looks);
        Said said = look("--age 24h --bloom none");
        assertEquals(4, said.exit());
        assertTrue(said.err().contains("it is a folder"), said.err());
        assertTrue(said.err().contains("This look was not kept"), said.err());
    }

    @Test
    void aDamagedLineIsPassedOverAndStays() throws Exception {
        look("--age 24h --bloom none");
        Files.writeString(looks, "{\"k\":\"look\",\"n\":2,\"sess", StandardOpenOption.APPEND);
        Said said = look("--age 7d --bloom none");
        assertEquals(1, said.exit());
        assertTrue(said.err().contains("line 2: This look cannot be read"), said.err());
        assertTrue(said.err().contains("The line stays as it is"), said.err());
        assertTrue(said.out().contains("look 3,"), said.out());
        assertEquals(3, Files.readAllLines(looks).size());
        assertEquals(2, look("--show").out().lines().count());
    }

    @Test
    void looksThatContradictEachOtherAreSaidAtOnce() {
        look("--age 24h --bloom veil");
        assertTrue(look("--age 7d --bloom none").out().contains("marks do not go away"));
    }

    @Test
    void whatGrowsIsThrownAway() {
        Said said = look("--age 4w --bloom fuzzy");
        assertTrue(said.out().contains("Throw the whole batch away and do not taste it"), said.out());
        assertFalse(said.out().contains("melted and tempered again"), said.out());
    }

    @Test
    void aPathOfAPhotoIsKeptThoughThePictureIsNotThere() throws Exception {
        Said said = look("--age 24h --bloom none --photo bars.jpg --photo b.jpg");
        assertEquals(0, said.exit());
        assertTrue(said.err().contains("There is no file bars.jpg at the moment"), said.err());
        assertTrue(Files.readString(looks).contains("\"photos\":[\"bars.jpg\",\"b.jpg\"]"));
    }

    /** A note is printed: it must not move the terminal's cursor. */
    @Test
    void aNoteCommandsNoTerminal() {
        List<String> words = new ArrayList<>(List.of(arguments("--age 24h --bloom none")));
        words.addAll(List.of("--note", "odd\u001B[2J"));
        Said said = Said.by(words.toArray(String[]::new));
        assertTrue(said.out().contains("\"odd?[2J\""), said.out());
    }

    @Test
    void questionsAreAnsweredByDigits() throws Exception {
        Said said = Said.withInput("9\n2 3\n1\n1\n\n12\n1\n\n\n", arguments("--ask --age 24h"));
        assertTrue(said.out().contains("Digits from 1 to 7, or Enter."), said.out());
        assertTrue(said.out().contains("One digit, please."), said.out());
        assertTrue(Files.readString(looks)
                .contains("\"bloom\":[\"veil\",\"streaks\"],\"places\":[\"all-over\"],\"snap\""));
    }

    @Test
    void whoQuitsOrSaysNothingKeepsNothing() {
        assertTrue(Said.withInput("q\n", arguments("--ask --age 24h"))
                .out()
                .endsWith("Nothing was kept." + System.lineSeparator()));
        Said.withInput("2\n", arguments("--ask --age 24h"));
        Said.withInput("\n\n\n\n\n\n", arguments("--ask --age 24h"));
        assertFalse(Files.exists(looks));
    }

    @Test
    void aPictureInTheSessionsFolderIsKeptByItsNameThere() throws Exception {
        Files.writeString(home.resolve("sessions").resolve("bars.jpg"), "a picture");
        Said said = look("--age 24h --bloom none --photo bars.jpg --photo gone.jpg");
        assertEquals(0, said.exit(), said.err());
        assertTrue(said.err().contains("There is no file gone.jpg"), said.err());
        assertFalse(said.err().contains("no file bars.jpg"), said.err());
        assertTrue(Files.readString(looks).contains("\"photos\":[\"bars.jpg\",\"gone.jpg\"]"), Files.readString(looks));
    }

    @Test
    void remindersAreACalendarFileOnStandardOutput() throws Exception {
        look("--reminders").refuses(1, "These bars are older than four weeks", "Nothing was written", "no look");
        session = new BarSessions(home, Instant.now().minusSeconds(50 * 3600)).batch(Origin.REAL, 31.6, 4);
        Said said = look("--reminders --at 18:30");
        assertEquals(0, said.exit(), said.err());
        assertTrue(said.out().startsWith("BEGIN:VCALENDAR"), said.out());
        assertTrue(said.out().contains(".168h@fifthform.invalid"), said.out());
        assertFalse(said.out().contains(".24h@fifthform.invalid"), said.out());
        look("--reminders --at noon").refuses(2, "--at was \"noon\"", "Nothing was done.", "18:30");
        look("--at 18:30").refuses(2, "--at belongs to --reminders", "Nothing was done.", "Say both");
        look("--reminders --bloom none").refuses(2, "--reminders stands alone", "Nothing was done.", "apart");
    }
}
