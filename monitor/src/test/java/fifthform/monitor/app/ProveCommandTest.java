package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Parsed;
import fifthform.curves.proof.Bend;
import fifthform.curves.proof.TemperClass;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.proofs.Cups;
import fifthform.monitor.proofs.KeptCup;
import fifthform.monitor.proofs.KeptCurve;
import fifthform.monitor.proofs.ProofFile;
import fifthform.simulator.device.SampleCup;
import fifthform.simulator.tube.FatMake;
import fifthform.simulator.tube.TubeAdapter;
import fifthform.simulator.tube.TubeCup;
import fifthform.simulator.tube.TubeReading;
import fifthform.simulator.tube.TubeSample;
import fifthform.simulator.tube.TubeTrial;
import fifthform.simulator.tube.TubeTrouble;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole command without a terminal: an invented cup, tables, and adapters that are only recorded lines. */
class ProveCommandTest {
    private static final TubeCup CUP = new TubeCup(3.7, 12, 0.35, 0.4, 0.45, 0.1, 0.04, 4, 0.1);

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "practice, in-temper, 0",
        "practice:under, under, 1",
        "practice:no-temper, no-temper, 1",
        "practice:over, over, 1",
        "practice:stirred, not-judged, 1"
    })
    void practiceBowlsComeOutAsTheyAre(String probe, String result, int exit) throws Exception {
        Said said = prove("--probe", probe, "--speed", "max", "--json");
        assertEquals(exit, said.exit(), said.err());
        assertEquals(result, JsonObject.parse(said.out().strip()).text("result"), said.out());
        assertFalse(Files.exists(folder.resolve("data")), "practice must leave nothing behind");
    }

    @Test
    void theMakerIsToldWhatToDoTheCautionsAndTheResult() {
        Said said = prove("--probe", "practice", "--speed", "max");
        for (String words : List.of(
                "Step 1 of 2",
                "crushed ice",
                "Step 2 of 2",
                "Dry the probe",
                "Throw the sample away",
                "for that chocolate only",
                "In the ice, from 31",
                "So far: in temper",
                "Result: IN TEMPER (provisional)",
                "no published ones were read",
                "never calibrated",
                "this was practice")) assertTrue(said.out().contains(words), words + " is missing in " + said.out());
    }

    @Test
    void calibratingTellsTheTimeConstantOfTheCup() throws Exception {
        Said said = prove("--calibrate", "--probe", "practice", "--speed", "max", "--json");
        assertEquals(0, said.exit(), said.err());
        JsonObject result = JsonObject.parse(said.out().strip());
        assertEquals("calibrated", result.text("result"));
        // The cup's own is 3.7 min for its slowest mode; the line from 30 to 22 °C sees a little of the next one.
        assertEquals(3.8, result.number("tau_min"), 0.25);
    }

    @Test
    void aTableIsJudgedAndItsBathHeard() throws Exception {
        Path good = table(0.02, 0.2, 10_000);
        JsonObject result = JsonObject.parse(
                prove("--curve", good.toString(), "--json").out().strip());
        assertEquals("in-temper", result.text("result"));
        assertEquals("warm-bath", first(table(0.02, 7, 10_000)));
        assertEquals("too-short", first(table(0.02, 0.2, 200)));
        Said unmeasured = prove("--curve", good.toString(), "--bath", "6");
        assertTrue(unmeasured.out().contains("The bath was too warm"), unmeasured.out());
    }

    private String first(Path table) throws Exception {
        Said said = prove("--curve", table.toString(), "--json");
        assertEquals(1, said.exit(), said.err());
        String unfit =
                said.out().replaceAll(".*\"unfit\":\\[\"([a-z-]+)\".*", "$1").strip();
        return unfit;
    }

    private Path table(double seed, double bath, int rows) throws IOException {
        TubeTrial trial = new TubeTrial(
                CUP,
                new TubeSample(FatMake.OF_THE_TABLES, 0.38, seed, SampleCup.GRAMS, 31.3),
                new TubeAdapter(1, 0.03, 0.01, 0),
                0.2,
                TubeTrouble.NONE);
        List<TubeReading> readings = trial.run(new SplittableRandom(9)).readings();
        StringBuilder text = new StringBuilder("time_s,temperature_c,bath_c\n");
        for (TubeReading r : readings.subList(0, Math.min(rows, readings.size())))
            text.append(String.format(Locale.ROOT, "%.1f,%.2f,%.1f%n", r.seconds(), r.celsius(), bath));
        return Files.writeString(Files.createTempFile(folder, "sample", ".csv"), text);
    }

    @Test
    void aSmearIsTimedBeforeAndKept() throws Exception {
        Said said = prove("--smear", "--minutes", "4", "--look", "glossy", "--room", "20", "--session", "none");
        assertEquals(0, said.exit(), said.err());
        assertTrue(said.out().contains("IN TEMPER by the smear"), said.out());
        Path kept = Path.of(said.out()
                .lines()
                .filter(l -> l.startsWith("Recorded in "))
                .findFirst()
                .orElseThrow()
                .substring("Recorded in ".length()));
        String text = Files.readString(kept);
        assertTrue(text.contains("\"kind\":\"smear\"") && text.contains("\"minutes\":4"), text);
        assertEquals(1, prove("--smear", "--minutes", "12", "--look", "wet").exit());
    }

    /** A recording that a cut ended is read as far as it goes, and judged as any other. */
    @Test
    void aRecordingIsJudgedAgain() throws Exception {
        Path table = table(0.02, 0.2, 10_000);
        StringBuilder text = new StringBuilder(
                "{\"k\":\"h\",\"format\":1,\"proof\":\"demo\",\"kind\":\"sample\",\"start\":\"2026-02-01T10:00:00Z\",\"origin\":\"simulated\",\"chocolate\":\"dark\",\"fat\":0.38,\"milk_fat\":0}\n{\"k\":\"b\",\"c\":0.1}\n");
        for (String row :
                Files.readAllLines(table).subList(1, Files.readAllLines(table).size())) {
            String[] cells = row.split(",");
            text.append("{\"k\":\"r\",\"t\":" + cells[0] + ",\"c\":" + cells[1] + "}\n");
        }
        text.append("{\"k\":\"r\",\"t\":99");
        Path file = Files.writeString(folder.resolve("demo.proof.jsonl"), text);
        Parsed<ProofFile.Recorded> read = ProofFile.read(file);
        assertEquals(1, read.fold(ProofFile.Recorded::lost, p -> -1));
        Said said = prove("--curve", file.toString());
        assertEquals(0, said.exit(), said.err() + said.out());
        assertTrue(said.err().contains("One line of it is damaged"), said.err());
        // It knows its own chocolate, and a run of melted chocolate is read as one.
        Path milk = Files.writeString(
                folder.resolve("milk.proof.jsonl"), text.toString().replace("\"dark\"", "\"milk\""));
        assertTrue(prove("--curve", milk.toString()).out().contains("Milk"));
        Path melted = Files.writeString(
                folder.resolve("melted.proof.jsonl"), text.toString().replace("\"sample\"", "\"melted\""));
        assertTrue(prove("--curve", melted.toString()).out().contains("too cold when it went into the ice"));
    }

    @Test
    void noAdapterCountsBelowNothing() {
        prove("--probe", "/dev/ttyUSB7", "--channel", "-1")
                .refuses(2, "--channel was -1", "Nothing was done", "0 or more");
    }

    @Test
    void aJudgedSampleIsMarkedLater() throws Exception {
        Cups cups = new Cups(folder.resolve("data/cups"));
        KeptCup cup = KeptCup.named("dark", "foil");
        for (String name : List.of("a", "b", "c"))
            cup = cup.with(new KeptCurve(
                    Instant.parse("2026-02-01T10:00:00Z"),
                    name,
                    Optional.empty(),
                    TemperClass.IN_TEMPER,
                    Optional.of(new Bend(0.2, 20.5, 200)),
                    name.equals("c") ? KeptCurve.Mark.NONE : KeptCurve.Mark.GOOD));
        cups.keep(cup);
        Said said = prove("mark", "c", "good");
        assertEquals(0, said.exit(), said.err());
        assertTrue(said.out().contains("judged by them now"), said.out());
        assertTrue(prove("list").out().contains("3 of 3 good curves"));
        prove("mark", "zz", "good").refuses(2, "No judged sample is called zz", "Nothing was done", "prove list");
        prove("mark", "last", "lovely").refuses(2, "is no mark", "Nothing was done", "good, bad or none");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--smear --calibrate|three things|Nothing was done|one of them",
                "--probe practice:foo|no practice bowl|Nothing was done|practice:under",
                "--probe practice --cup Big!|--cup was Big!|Nothing was done|lower-case",
                "--probe practice --grams 90|--grams was 90|Nothing was done|4 to 30",
                "--probe practice --bath 99|--bath was 99|Nothing was done|°C",
                "--smear --minutes 4 --look strek|not known|Nothing was kept|Did you mean \"streaks\"",
                "--smear --minutes 0 --look glossy|--minutes was 0|Nothing was done|0.5 to 120",
                "--minutes 4 --probe practice|--minutes belongs to the smear|Nothing was done|--smear",
                "--probe practice --look glossy|--look belongs to the smear|Nothing was done|--smear",
                "--smear|Nobody can press Enter|Nothing was done|--minutes"
            })
    void slipsAreAnsweredWithWhatToDo(String options, String what, String meaning, String toDo) {
        Said said = prove(options.split(" "));
        assertEquals(2, said.exit(), said.err());
        for (String words : List.of(what, meaning, toDo)) assertTrue(said.err().contains(words), said.err());
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        prove("--curve", folder.resolve("none.csv").toString())
                .refuses(4, "There is no file", "Nothing was judged", "Check the name");
    }

    @Test
    void whatIsNoCurveIsSaidInPlainWords() throws IOException {
        prove("--curve", folder.toString()).refuses(4, "is no file", "Nothing was judged", "Check the name");
        byte[] noText = {(byte) 0xff, (byte) 0xfe, 0, (byte) 0x80, '\n'};
        Path table = Files.write(folder.resolve("noise.csv"), noText);
        prove("--curve", table.toString()).refuses(4, "it is no text in UTF-8", "Nothing was judged", "Check the name");
        Path noise = Files.write(folder.resolve("noise.proof.jsonl"), noText);
        prove("--curve", noise.toString()).refuses(4, "not a JSON object", "nothing is known of it", ".proof.jsonl");
        Path empty = Files.createFile(folder.resolve("empty.proof.jsonl"));
        prove("--curve", empty.toString()).refuses(4, "It is empty", "nothing is known of it", ".proof.jsonl");
    }

    @Test
    void aSmearIsListedToo() throws Exception {
        assertTrue(prove("list").out().contains("Nothing was proved yet"));
        prove("--smear", "--minutes", "4", "--look", "glossy", "--session", "none");
        Said list = prove("list");
        assertTrue(list.out().contains("in temper by the smear · set after 4 min 00 s, glossy"), list.out());
        assertFalse(list.out().contains("Nothing was proved"), list.out());
        JsonObject smear =
                JsonObject.parse(prove("list", "--json").out().strip()).object("smear");
        assertEquals("in-temper", smear.text("result"));
        prove("mark", smear.text("proof"), "good").refuses(2, "is a smear test", "Nothing was done", "look");
    }

    private Said prove(String... options) {
        List<String> arguments = new ArrayList<>(List.of("prove"));
        arguments.addAll(List.of(options));
        arguments.addAll(List.of("--data", folder.resolve("data").toString()));
        return Said.by(arguments.toArray(String[]::new));
    }
}
