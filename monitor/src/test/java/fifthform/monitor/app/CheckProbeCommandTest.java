package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.json.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole command without a terminal: on practice pots and on lines that were recorded, in their own time. */
class CheckProbeCommandTest {
    @TempDir
    Path folder;

    @Test
    void findsTheOffsetOfThePracticeProbe() throws Exception {
        Said said = check("--probe", "practice", "--json");
        assertEquals(0, said.exit(), said.err());
        assertEquals(1, said.out().lines().count());
        JsonObject result = JsonObject.parse(said.out().strip());
        assertEquals("passed", result.text("result"));
        assertEquals(-0.62, result.number("offset_k"), 0.06);
        assertTrue(result.number("sigma_k") < result.number("sigma_before_k") / 3);
        // The practice probe reads 1.003 · t + 0.62; what is left of that at 31.5 °C lies within the stated doubt.
        double corrected = result.number("gain") * (1.003 * 31.5 + 0.62) + result.number("offset_k");
        assertEquals(31.5, corrected, 2 * result.number("sigma_k"));
        assertNothingKept(result);
    }

    @Test
    void findsGainAndOffsetInBothPots() throws Exception {
        Said said = check("--probe", "practice", "--ice", "--boil", "--pressure", "1013", "--json");
        assertEquals(0, said.exit(), said.err());
        JsonObject result = JsonObject.parse(said.out().strip());
        assertEquals(1 / 1.003, result.number("gain"), 0.001);
        assertEquals(2, result.objects("points").size());
        assertNothingKept(result);
    }

    /** The altitude alone leaves the weather unknown, so the boiling point may only object. */
    @Test
    void theAltitudeAloneDoesNotCorrect() throws Exception {
        Said said = check("--probe", "practice", "--ice", "--boil", "--altitude", "500", "--json");
        JsonObject result = JsonObject.parse(said.out().strip());
        assertEquals(1, result.number("gain"));
        assertEquals(2, result.objects("points").size());
        assertTrue(result.has("boil_off_k"));
    }

    @Test
    void saysWhatToDoTheCautionsAndTheResult() {
        Said said =
                check("--probe", "practice", "--ice", "--boil", "--altitude", "300", "--sea-level-pressure", "1009");
        assertEquals(0, said.exit(), said.err());
        for (String words : List.of(
                "Step 1 of 2",
                "crushed ice",
                "an arm's length",
                "Step 2 of 2",
                "steam scald",
                "Taken",
                "Result",
                "Check again by",
                "this was practice")) assertTrue(said.out().contains(words), words + " is missing in " + said.out());
        assertFalse(said.out().contains("Enter"), "no key is needed where there is no terminal");
    }

    @Test
    void aBoilingPointAloneCorrectsNothing() throws Exception {
        Said said = check("--probe", "practice", "--boil", "--pressure", "990", "--json");
        assertEquals(0, said.exit(), said.err());
        assertFalse(JsonObject.parse(said.out().strip()).has("gain"));
    }

    @Test
    void showsFahrenheitWhereAsked() {
        Said said = check("--probe", "practice", "--units", "f");
        assertTrue(said.out().contains("where 32.00 °F is true"), said.out());
    }

    @Test
    void comparesTwoProbes() throws Exception {
        Said said = check("--probe", "practice", "--against", "practice", "--json");
        assertEquals(0, said.exit(), said.err());
        // 1.003 · 32 + 0.62 against 0.998 · 32 + 0.2.
        assertEquals(0.58, JsonObject.parse(said.out().strip()).number("difference_k"), 0.1);
    }

    @Test
    void takesAnIcePointFromRecordedLinesAndKeepsNothing() throws Exception {
        Said said = check("--probe", lines(s -> 0.4 + 21 * Math.exp(-s / 4.0) + 0.02 * (s % 3)), "--json");
        assertEquals(0, said.exit(), said.err());
        JsonObject result = JsonObject.parse(said.out().strip());
        assertEquals(-0.42, result.number("offset_k"), 0.03);
        assertNothingKept(result);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0|0|does not move",
                "21|0.02|Put the tip into the water",
                "8|0.02|more than 5 K off",
            })
    void whatIsNoIcePointIsNotTaken(double celsius, double unrest, String words) throws Exception {
        Said said = check("--probe", lines(s -> celsius + unrest * (s % 3)), "--json");
        assertEquals(1, said.exit(), said.err());
        JsonObject result = JsonObject.parse(said.out().strip());
        assertEquals("not-passed", result.text("result"));
        assertTrue(result.text("why").contains(words), result.text("why"));
        assertFalse(result.has("gain"));
    }

    @Test
    void aProbeBeyondItsClassIsNotCorrected() throws Exception {
        String probe = lines(s -> 3.6 + 18 * Math.exp(-s / 4.0) + 0.02 * (s % 3));
        Said said = check("--probe", probe, "--type", "t", "--class", "1", "--converter", "MAX31856", "--json");
        assertEquals(1, said.exit(), said.err());
        assertTrue(JsonObject.parse(said.out().strip()).text("why").contains("class"), said.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--boil --pressure 760|millimetres|Nothing was done|1013",
                "--boil --pressure 29.9|inches|Nothing was done|1013",
                "--boil --altitude 9000|9000 m|Nothing was done|metres",
                "--boil|pressure|Nothing was done|--altitude",
                "--pressure 1013|boiling point only|Nothing was done|--boil",
                "--channel -1|--channel was -1|Nothing was done|0 or more",
                "--class 7|--class was \"7\"|Nothing was done|Say one of",
                "--converter max31857|max31857|Nothing was done|max31856",
                "--talk no-such|no-such|Nothing was done|Known are"
            })
    void slipsAreAnsweredWithWhatToDo(String options, String what, String meaning, String toDo) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("--probe", lines(s -> 0)));
        arguments.addAll(List.of(options.split(" ")));
        Said said = check(arguments.toArray(String[]::new));
        assertEquals(2, said.exit(), said.err());
        for (String words : List.of(what, meaning, toDo)) assertTrue(said.err().contains(words), said.err());
        assertEquals("", said.out());
    }

    @Test
    void aPortThatIsNotThereIsNoProbe() {
        Said said = check("--probe", folder.resolve("ttyNONE").toString());
        assertEquals(3, said.exit());
        assertTrue(said.err().contains("There is no port"), said.err());
    }

    @Test
    void whatIsNotKnownCannotBeForgotten() {
        Said said = check("--probe", "/dev/ttyNONE", "--forget");
        assertEquals(1, said.exit());
        assertTrue(said.err().contains("nothing to forget"), said.err());
    }

    private void assertNothingKept(JsonObject result) {
        assertFalse(result.has("kept"));
        assertFalse(Files.exists(folder.resolve("data")), "practice must leave nothing behind");
    }

    private Said check(String... options) {
        List<String> arguments = new ArrayList<>(
                List.of("check-probe", "--data", folder.resolve("data").toString()));
        arguments.addAll(List.of(options));
        return Said.by(arguments.toArray(String[]::new));
    }

    /** Ten minutes of lines, one a second; answers with the name of the probe that reads them. */
    private String lines(IntToDoubleFunction celsius) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int s = 0; s < 600; s++) text.append(String.format(Locale.ROOT, "%.2f%n", celsius.applyAsDouble(s)));
        return "file:" + Files.writeString(folder.resolve("lines.txt"), text);
    }
}
