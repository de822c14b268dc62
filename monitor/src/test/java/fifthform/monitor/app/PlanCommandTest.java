package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanCommandTest {
    private static final String TOLD =
            "--amount 800 --bowl steel --bowl-weight 350 --pan-weight 900 --tap 14 --thermometer checked --room 21";

    @TempDir
    Path home;

    private Said plan(String words) {
        return Said.by(Stream.concat(Stream.of("plan", "--data", home.toString()), Stream.of(words.split(" ")))
                .toArray(String[]::new));
    }

    @Test
    void thePageGoesFromMeltingToMouldsWithClockTimesAndHandsOnToWatch() {
        Said said = plan(TOLD + " --humidity 50 --bar 80 --start 18:30");
        assertEquals(0, said.exit(), said.err());
        List<String> order = List.of(
                "MELT",
                "COLD BATH",
                "HOLD",
                "WARM BATH",
                "Quick, watched",
                "SEED",
                "SLAB",
                "POUR",
                "MOULDS",
                "COOL",
                "18:30",
                "Then type: monitor/run watch");
        int from = 0;
        for (String word : order) {
            int at = said.out().indexOf(word, from);
            assertTrue(at >= from, word + " is missing after the others in: " + said.out());
            from = at;
        }
        assertTrue(said.err().contains("scald"), said.err());
        assertFalse(said.out().contains("source:"), said.out());
        String line = said.out()
                .lines()
                .filter(l -> l.startsWith("Then type: monitor/run "))
                .findFirst()
                .orElseThrow()
                .replace("Then type: monitor/run ", "");
        FifthForm.line().parseArgs(line.split(" "));
    }

    @Test
    void everyFigureHasItsFormulaAndSourceOnDemandAndForScripts() {
        String why = plan(TOLD + " --why").out();
        List<String> json = plan(TOLD + " --json").out().lines().toList();
        List<String> figures =
                json.stream().filter(line -> line.startsWith("{\"figure\"")).toList();
        assertTrue(figures.size() >= 30, figures.toString());
        assertEquals(figures.size(), why.split("    source: ", -1).length - 1);
        assertTrue(json.stream().anyMatch(line -> line.startsWith("{\"step\":\"cold-bath\"")), json.toString());
        for (String line : json) assertTrue(line.startsWith("{") && line.endsWith("}"), line);
    }

    @Test
    void aCheckedThermometerMayGoNearerToTheRange() {
        String unchecked = plan(TOLD.replace("checked", "unchecked")).out();
        assertTrue(unchecked.contains("The thermometer was not checked"), unchecked);
        assertTrue(bath(plan(TOLD + " --json").out())
                > bath(plan(TOLD.replace("checked", "unchecked") + " --json").out()) + 1);
    }

    @Test
    void aBowlThatIsNearlyAKnownOneIsAskedAbout() {
        assertTrue(plan("--amount 500 --bowl stel")
                .err()
                .contains("No bowl is called stel so far; the plan takes it for a new one. Did you mean \"steel\"?"));
        assertFalse(plan("--amount 500 --bowl Steel").err().contains("No bowl"));
        assertFalse(plan("--amount 500 --bowl grandmother").err().contains("No bowl"));
    }

    @Test
    void theCardIsWrittenAsTextOrAsADrawing() throws Exception {
        Path text = home.resolve("card.txt");
        Path drawing = home.resolve("card.svg");
        assertEquals(0, plan(TOLD + " --card " + text).exit());
        assertEquals(0, plan(TOLD + " --card " + drawing).exit());
        for (String line : Files.readAllLines(text)) assertTrue(line.length() <= 64, line);
        assertTrue(Files.readString(text).contains("bath at most"), Files.readString(text));
        javax.xml.parsers.DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(drawing.toFile());
        Said lost = plan(TOLD + " --card " + home.resolve("no/such/folder.txt"));
        assertEquals(4, lost.exit());
        assertTrue(lost.err().contains("The plan above stands"), lost.err());
    }

    @Test
    void fahrenheitIsShownEverywhere() {
        String page = plan(TOLD + " --units f").out();
        assertTrue(page.contains("°F"), page);
        assertFalse(page.contains("°C"), page);
    }

    @Test
    void whatIsNotSaidIsAskedFor() throws Exception {
        PlanCommand command = new PlanCommand();
        StringWriter shown = new StringWriter();
        BufferedReader answers = new BufferedReader(new StringReader("lots\n800\nglass\n\n14,5\nchecked\n"));
        command.ask(new PlanQuestions(answers, new PrintWriter(shown)));
        assertTrue(shown.toString().contains("A number from 50 to 20000"), shown.toString());
        assertEquals(5, shown.toString().split("\\[Enter", -1).length - 2);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        --tap 14                            | How much chocolate was not said
        --amount 3                          | --amount was 3.
        --amount 800 --tap 90               | --tap was 90.
        --amount 800 --thermometer perhaps  | Say one of: checked, unchecked
        --amount 800 --pan wood             | --pan was "wood"
        --amount 800 --start soon           | Say it as 18:30
        """)
    void whatCannotBeIsRefusedWithAWayOut(String words, String answer) {
        Said said = plan(words);
        assertEquals(2, said.exit());
        assertTrue(said.err().contains(answer), said.err());
        assertTrue(said.err().contains("Nothing was done"), said.err());
    }

    private static double bath(String json) {
        String line = json.lines()
                .filter(l -> l.contains("\"figure\":\"warm-bath\""))
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(line.replaceAll(".*\"value\":([\\d.]+).*", "$1"));
    }
}
