package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.json.JsonObject;
import java.io.BufferedReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What other programs hold on to: the lines of {@code analyse}, as the page of promises has them. */
@Timeout(120)
class AnalyseCommandTest {
    private static final List<String> KEYS = List.of(
            "session",
            "time_s",
            "phase",
            "estimate_c",
            "sigma_k",
            "rate_k_per_min",
            "peak_if_lifted_c",
            "peak_lower_c",
            "peak_upper_c",
            "peak_if_left_c",
            "crystals",
            "alarms",
            "cues");
    private static final List<String> SUMMARY_KEYS = List.of(
            "readings",
            "gaps_s",
            "phases",
            "highest_work_c",
            "lowest_cool_c",
            "over_range_s",
            "first_trouble",
            "crystals",
            "seed_lost",
            "verdict");

    @TempDir
    Path folder;

    @Test
    void eachLineHasThePromisedKeysInTheirOrder() throws Exception {
        Said said = Said.by("analyse", invented(7, 400).toString());
        assertEquals(0, said.exit(), said.err());
        List<String> lines = said.out().lines().toList();
        for (String line : lines.subList(0, lines.size() - 1)) {
            assertEquals(KEYS, topKeys(line), line);
            JsonObject.parse(line);
        }
        String last = lines.get(lines.size() - 1);
        assertEquals(List.of("session", "summary", "bowl", "causes", "begins"), topKeys(last));
        assertEquals(SUMMARY_KEYS, topKeys(last.substring(last.indexOf("{", 1), last.indexOf(",\"bowl\""))));
        assertTrue(
                lines.get(0).startsWith("{\"session\":\"demo-7\",\"time_s\":0.00,\"phase\":\"melt\","), lines.get(0));
    }

    @Test
    void numbersAreRoundedToThousandthsAndTimesKeepTheirText() throws Exception {
        Path file = Files.writeString(
                folder.resolve("demo.csv"),
                "time_s,temperature_c\n0,31.1234567\n0.50,31.1\n1.000,31.2\n1.5e0,31.2\n002,31.2\n");
        Said said = Said.by("analyse", file.toString());
        List<String> times = new ArrayList<>();
        Matcher time = Pattern.compile("\"time_s\":([^,]*),").matcher(said.out());
        while (time.find()) times.add(time.group(1));
        assertEquals(List.of("0", "0.50", "1.000"), times.subList(0, 3), said.out());
        for (String line : said.out().lines().toList()) JsonObject.parse(line);
        assertFalse(
                Pattern.compile("\"[a-z_]+_(c|k|min)\":-?[0-9]+\\.[0-9]{4,}")
                        .matcher(said.out())
                        .find(),
                said.out());
        assertTrue(said.out().contains("\"estimate_c\":31.123,"), said.out());
    }

    /** Nothing from the future: whatever comes later, what was said before stays as it was. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void theOutputForAPrefixIsAPrefixOfTheOutput(long seed) throws Exception {
        Path whole = invented(seed, 150);
        List<String> rows = Files.readAllLines(whole);
        List<String> said = withoutSummary(Said.by("analyse", whole.toString()).out());
        Path part = Files.createDirectories(folder.resolve("part")).resolve(whole.getFileName());
        for (int rowsKept = 1; rowsKept <= rows.size(); rowsKept += rowsKept < 5 ? 1 : 7) {
            Files.write(part, rows.subList(0, rowsKept));
            List<String> prefix =
                    withoutSummary(Said.by("analyse", part.toString()).out());
            assertEquals(said.subList(0, prefix.size()), prefix, "seed " + seed + ", " + rowsKept + " rows");
            assertTrue(prefix.size() <= rowsKept - 1);
        }
        assertEquals(rows.size() - 1, said.size());
    }

    /** As replay takes it. */
    @Test
    void aSessionIsFoundByItsName() throws Exception {
        Path sessions = Files.createDirectories(folder.resolve("sessions"));
        Files.copy(
                Path.of("src/test/resources/tapes/demo-unplugged.tempering.jsonl"),
                sessions.resolve("demo-unplugged.tempering.jsonl"));
        Said said = Said.by("analyse", "--data", folder.toString(), "--summary", "demo-unplugged");
        assertEquals(0, said.exit(), said.err());
        assertTrue(said.out().startsWith("{\"session\":\"demo-unplugged\",\"summary\""), said.out());
        assertTrue(
                said.out()
                        .matches(
                                "(?s).*\"bowl\":\\{\"name\":\"[^\"]+\",\"material\":\"[a-z]+\".*\"coast_s\":[0-9.]+,.*\"lifts\":[1-9].*"),
                said.out());
    }

    @Test
    void everyAndSummaryKeepFewerLines() throws Exception {
        Path file = invented(8, 100);
        List<String> all = Said.by("analyse", file.toString()).out().lines().toList();
        List<String> tenth = Said.by("analyse", "--every", "10", file.toString())
                .out()
                .lines()
                .toList();
        assertEquals(11, tenth.size());
        for (int i = 0; i < 10; i++) assertEquals(all.get(10 * i), tenth.get(i));
        assertEquals(all.get(100), tenth.get(10));
        assertEquals(
                all.subList(100, 101),
                Said.by("analyse", "--summary", file.toString()).out().lines().toList());
        Said.by("analyse", "--every", "0", file.toString())
                .refuses(2, "--every was 0.", "Nothing was done.", "Give 1 or more.");
    }

    @Test
    void twoFilesAreTwoBatches() throws Exception {
        Path one = invented(9, 40);
        Path other = invented(10, 40);
        String both = Said.by("analyse", one.toString(), other.toString()).out();
        assertEquals(
                Said.by("analyse", one.toString()).out()
                        + Said.by("analyse", other.toString()).out(),
                both);
    }

    @Test
    void standardInputIsSaidLikeAFile() throws Exception {
        Path file = invented(11, 60);
        Said said = Said.withInput(Files.readString(file), "analyse", "-");
        assertEquals(Said.by("analyse", file.toString()).out().replace("\"demo-11\"", "\"stdin\""), said.out());
    }

    /** Another program in the loop waits for the answer to a row before it writes the next. */
    @Test
    void standardInputIsAnsweredRowByRow() throws Exception {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "analyse",
                        "-")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader answers = program.inputReader(StandardCharsets.UTF_8)) {
            try (Writer rows = program.outputWriter(StandardCharsets.UTF_8)) {
                rows.write("time_s,temperature_c\n");
                for (int second = 0; second < 20; second++) {
                    rows.write(second + ",31." + second % 10 + "\n");
                    rows.flush();
                    assertTrue(answers.readLine().contains("\"time_s\":" + second + ","));
                }
            }
            assertTrue(answers.readLine().contains("\"summary\":{\"readings\":20,"));
            assertEquals(0, program.waitFor());
        } finally {
            program.destroyForcibly();
        }
    }

    @Test
    void aRowThatCannotBeReadIsSaidAndTheRestIsAnalysed() {
        Said said = Said.withInput("time_s,temperature_c\n0,31\n1,warm\n2,31.2\n", "analyse", "-");
        assertEquals(1, said.exit());
        assertTrue(said.err().contains("line 3"), said.err());
        assertTrue(said.err().contains("warm"), said.err());
        assertEquals(3, said.out().lines().count());
    }

    @Test
    void fahrenheitIsAnalysedAsWhatItIs() {
        Said said = Said.withInput("time_s,temperature_f\n0,86\n1,86\n", "analyse", "-");
        assertEquals(0, said.exit(), said.err());
        assertEquals(2, said.out().split("\"estimate_c\":30,", -1).length - 1, said.out());
    }

    private static List<String> withoutSummary(String out) {
        List<String> lines = out.lines().toList();
        return lines.isEmpty() ? lines : lines.subList(0, lines.size() - 1);
    }

    /** Keys of the outermost object; good enough for lines whose texts hold no braces. */
    private static List<String> topKeys(String line) {
        List<String> keys = new ArrayList<>();
        int depth = 0;
        Matcher part = Pattern.compile("[\\[{]|[\\]}]|\"([a-z_]+)\":").matcher(line);
        while (part.find()) {
            if (part.group(1) != null) {
                if (depth == 1) keys.add(part.group(1));
            } else depth += "[{".contains(part.group()) ? 1 : -1;
        }
        return keys;
    }

    /** A made-up way through melting, cooling and warming, with noise, gaps, acts, and cells that are empty. */
    private Path invented(long seed, int rows) throws Exception {
        Random random = new Random(seed);
        String[] acts = {
            "on-bath", "off-bath", "in-cold", "out-of-cold", "stir", "still", "seed", "probe-out", "probe-in"
        };
        StringBuilder text = new StringBuilder("time_s,temperature_c,bath_c,event,remark\n");
        double time = 0;
        double celsius = 46;
        for (int row = 0; row < rows; row++) {
            double aim = row < rows / 4 ? 48 : row < rows / 2 ? 27 : 33;
            celsius += 0.03 * (aim - celsius) + 0.05 * random.nextGaussian();
            String act = random.nextInt(12) == 0 ? acts[random.nextInt(acts.length)] : "";
            String bath = random.nextInt(3) == 0 ? String.format(Locale.ROOT, "%.1f", 40 + random.nextDouble()) : "";
            text.append(String.format(Locale.ROOT, "%.2f,%.2f,%s,%s,demo%n", time, celsius, bath, act));
            time += random.nextInt(25) == 0 ? 20 + random.nextInt(200) : 1 + random.nextInt(4) / 4.0;
        }
        return Files.writeString(folder.resolve("demo-" + seed + ".csv"), text.toString());
    }
}
