package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/**
 * What cannot be done: each time a message in three parts and the exit code that scripts rely on, no stack trace, and
 * nothing begun or lost.
 */
@Timeout(120)
class RefusalsTest {
    @TempDir
    Path home;

    private Path sessions;

    @BeforeEach
    void folders() {
        sessions = home.resolve("sessions");
    }

    @Test
    void noSuchPort() {
        watch("--probe", home.resolve("ttyDEMO").toString())
                .refuses(3, "There is no port", "No reading can be taken.", "Plug the adapter in");
        beganNothing();
    }

    @Test
    void missingFileOfBytes() {
        watch("--probe", "file:" + home.resolve("none.bytes"))
                .refuses(4, "There is no such file.", "Nothing can be watched.", "Check the path.");
        beganNothing();
    }

    @Test
    void damagedFileOfBytes() throws IOException {
        Path file = Files.writeString(home.resolve("demo.bytes"), "0.5 zz\n");
        watch("--probe", "file:" + file).refuses(4, "demo.bytes line 1", "not a time with bytes", "Write lines of");
        beganNothing();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        --chocolate pink        | "pink" is not a chocolate I know      | no targets are known  | Known: dark
        --chocolate drak        | "drak" is not a chocolate I know      | no targets are known  | Did you mean "dark"
        --amount 0              | --amount was 0.                       | Nothing was done.     | Give 10 to 20000 grams.
        --amount NaN            | --amount was NaN.                     | Nothing was done.     | Give 10 to 20000 grams.
        --bath 100              | --bath was 100.                       | Nothing was done.     | Give 20 to 99 °C.
        --speed 0               | --speed was 0.                        | Nothing was done.     | from 1 to 60, or max.
        --speed fast            | --speed was fast.                     | Nothing was done.     | from 1 to 60, or max.
        --interval 0            | --interval was 0.0.                   | Nothing was done.     | Give seconds from
        --join pour             | --join was pour.                      | Nothing was done.     | Say melt, cool
        --units k               | --units was k.                        | Nothing was done.     | Say --units c or --units f.
        --talk morse            | No protocol is called morse.          | Nothing was done.     | text-lines
        --amount much           | --amount was much. Give a number      | Nothing was done.     | Try: monitor/run watch --help
        --amount nan            | --amount was nan. Give a number       | Nothing was done.     | Try: monitor/run watch --help
        --bath 95F              | --bath was 95F. Give degrees Celsius  | Nothing was done.     | Try: monitor/run watch --help
        --amount 800g           | --amount was 800g. Give a number      | Nothing was done.     | Try: monitor/run watch --help
        --amount 800d           | --amount was 800d. Give a number      | Nothing was done.     | Try: monitor/run watch --help
        --screen wall           | --screen was wall. Say one of: window | Nothing was done.     | Try: monitor/run watch --help
        --sceen lines           | Unknown option                        | Nothing was done.     | Try: monitor/run watch --help
        """)
    void optionsThatAreNotUnderstood(String option, String what, String means, String mend) {
        String[] words = option.split(" ");
        watch("--probe", "practice", words[0], words[1]).refuses(2, what, means, mend);
        beganNothing();
    }

    @Test
    void unknownScenario() {
        watch("--probe", "practice:first-ligth")
                .refuses(2, "no practice scenario", "first-ligth", "Did you mean \"first-light\"?");
        beganNothing();
    }

    @Test
    void aRealProbeRunsAtTheSpeedOfLife() {
        watch("--probe", home.resolve("ttyDEMO").toString(), "--speed", "10")
                .refuses(2, "--speed was given with a real probe", "Nothing was done.", "Leave --speed out.");
        beganNothing();
    }

    @Test
    void aRecipeWithItsRangeUpsideDown() throws IOException {
        String good =
                Said.by("recipes", "show", "dark", "--data", home.toString()).out();
        Path file = Files.writeString(
                home.resolve("demo.recipe"),
                good.replaceFirst("(?m)^work low = .*$", "work low = 33 C").replaceFirst("(?m)^id = .*$", "id = demo"));
        Said checked = Said.by("recipes", "check", file.toString());
        checked.refuses(1, "demo.recipe", "work", "33");
        Said watched = watch("--probe", "practice", "--chocolate", file.toString());
        assertEquals(4, watched.exit(), watched.err());
        assertEquals(checked.err(), watched.err());
        beganNothing();
    }

    /** Slips of the pen are answered in words: indexes and kinds of numbers are the library's. */
    @Test
    void wordsTooManyAndNumbersTooLarge() {
        Said.by("prove", "list", "extra").refuses(2, "\"extra\" is not expected here", "Nothing was done", "--help");
        Said.by("look", "last", "--undo", "99999999999")
                .refuses(2, "--undo was 99999999999", "Give a smaller number", "--help");
    }

    @Test
    void whatLiesBesideASessionIsNoSession() {
        Said.by("look", "demo.proof.jsonl")
                .refuses(4, "a sample that was proved", "Nothing was done.", "Name the session itself");
        Said.by("replay", "--screen", "none", "demo.looks.jsonl")
                .refuses(4, "looks at the bars", "Nothing was done.", "or last");
    }

    @Test
    void aPartOfASessionsNameOrAMistypedOneIsAskedAbout() throws IOException {
        Path sessions = Files.createDirectories(home.resolve("sessions"));
        for (String name : List.of("2026-02-08-180000-dark", "2026-02-09-101500-milk"))
            Files.createFile(sessions.resolve(name + ".tempering.jsonl"));
        session("2026-02-08")
                .refuses(4, "There is no session 2026-02-08.", "Did you mean \"2026-02-08-180000-dark\"?", "Look in");
        session("2026-02").refuses(4, "\"2026-02-09-101500-milk\"?", "Nothing was done.", "Look in");
        session("2026-02-09-101500-mlik").refuses(4, "\"2026-02-09-101500-milk\"?", "Nothing was done.", "Look in");
        session("tuesday").refuses(4, "There is no session tuesday. Nothing", "was done.", "Look in ");
    }

    private Said session(String name) {
        return Said.by("replay", "--screen", "none", name, "--data", home.toString());
    }

    @Test
    void missingFilesOfEveryKind() {
        String none = home.resolve("none").toString();
        Said.by("replay", "--screen", "none", none, "--data", home.toString())
                .refuses(4, "There is no session", "Nothing was done.", "Look in ");
        Said.by("replay", "--screen", "none", "last", "--data", home.toString())
                .refuses(4, "There is no session in", "Nothing was done.", "Record one:");
        Said.by("analyse", none + ".csv")
                .refuses(4, "There is no such file.", "It was not analysed.", "Name a text file");
        Said.by("analyse", none + ".tempering.jsonl")
                .refuses(4, "There is no session", "Nothing was done.", "Look in ");
        Said.by("recipes", "check", none).refuses(4, "none", "There is no such file.", "Check the path.");
        watch("--probe", "practice", "--chocolate", none)
                .refuses(4, "none", "There is no such file.", "Check the path.");
        beganNothing();
    }

    @Test
    void aTableThatIsNone() throws IOException {
        Path file = Files.writeString(home.resolve("demo.csv"), "hello\n1\n");
        Said said = Said.by("analyse", file.toString());
        assertEquals(4, said.exit(), said.err());
        assertTrue(said.err().contains("time_s"), said.err());
        Files.write(
                home.resolve("latin.csv"), "time_s,temperature_c,été\n0,31\n".getBytes(StandardCharsets.ISO_8859_1));
        Said.by("analyse", home.resolve("latin.csv").toString())
                .refuses(4, "not text in UTF-8", "It was not analysed.", "Name a text file");
    }

    @Test
    void aFolderWhereNothingCanBeWritten() throws IOException {
        Path file = Files.writeString(home.resolve("file"), "in the way\n");
        Said said = Said.by("watch", "--probe", "practice", "--screen", "none", "--record", file.toString());
        assertEquals(4, said.exit(), said.err());
        assertTrue(said.err().contains("cannot be opened for writing"), said.err());
        assertTrue(said.err().contains("Nothing is recorded."), said.err());
        assertTrue(said.err().contains("choose another folder with --record"), said.err());
        assertFalse(said.err().contains("\tat "), said.err());
        assertEquals("in the way\n", Files.readString(file));
    }

    @Test
    void aDamagedSessionIsShownAsFarAsItCanBe() throws IOException {
        Path golden = GoldenSessionTest.golden();
        String name = golden.getFileName().toString();
        List<String> lines = Files.readAllLines(golden);
        Path changed = home.resolve(name);
        int one = lines.size() / 2;
        lines.set(one, lines.get(one).replace("\"t\":", "\"t\":9"));
        lines.set(one + 100, "{\"k\":\"r\",\"s\":");
        Files.write(changed, lines);
        byte[] before = Files.readAllBytes(changed);
        Said said = Said.by("replay", "--screen", "none", changed.toString());
        assertEquals(1, said.exit(), said.err());
        assertTrue(said.err().contains("not as they were written"), said.err());
        assertTrue(said.err().contains("damaged"), said.err());
        assertTrue(said.out().contains("simulated"), said.out());
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(changed));

        Files.writeString(changed, "no header\n", StandardOpenOption.TRUNCATE_EXISTING);
        Said.by("replay", "--screen", "none", changed.toString()).refuses(4, name, "first line", "backup");
    }

    @Test
    void aFaultOfTheProgramSaysWhatToReport() throws Exception {
        CommandLine line = FifthForm.line();
        StringWriter err = new StringWriter();
        line.setErr(new PrintWriter(err, true));
        int exit = Main.refusals(false).handleExecutionException(new IllegalStateException("demo"), line, null);
        assertEquals(70, exit);
        assertTrue(err.toString().contains("fault of the program: java.lang.IllegalStateException: demo"));
        assertTrue(err.toString().contains("What has been recorded is kept. Please report it"));
        assertFalse(err.toString().contains("\tat "));
        Main.refusals(true).handleExecutionException(new IllegalStateException("demo"), line, null);
        assertTrue(err.toString().contains("\tat "));
    }

    @Test
    void aPortThatThisUserMayNotOpen() throws Exception {
        SerialPair.require();
        try (SerialPair line = new SerialPair(home)) {
            line.plugIn();
            Files.setPosixFilePermissions(Path.of(line.port()).toRealPath(), Set.of());
            Program program = Program.start(withoutPowers(), home, "watch", "--probe", line.port());
            assertEquals(3, program.exit(), program.err());
            assertTrue(program.err().contains("You may not open the port"), program.err());
            assertTrue(program.err().contains("No reading can be taken."), program.err());
            assertFalse(program.err().contains("\tat "), program.err());
            assertEquals(List.of(), program.sessions());
        }
    }

    /** Closed doors are open to root; without these two powers even root must heed them. */
    private static List<String> withoutPowers() {
        if (!"root".equals(System.getProperty("user.name"))) return List.of();
        assumeTrue(Program.isInstalled("setpriv"), "no setpriv: root cannot be kept out of a port");
        return List.of("setpriv", "--bounding-set=-dac_override,-dac_read_search");
    }

    private Said watch(String... options) {
        return Said.by(Stream.concat(
                        Stream.of("watch", "--screen", "none", "--record", sessions.toString()), Stream.of(options))
                .toArray(String[]::new));
    }

    private void beganNothing() {
        assertFalse(Files.exists(sessions), sessions + " should not be there");
    }
}
