package fifthform.simulator.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command from end to end, on sessions without physics. */
class TrainCommandTest {
    private static final String SMALL = "--sessions 40 --passes 3 --units 4 --middle 5 --batch 8 --pace 0.01";

    @TempDir
    Path folder;

    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private Path file;
    private int simulated;

    @BeforeEach
    void name() {
        file = folder.resolve("new").resolve("weights.txt");
    }

    private int run(String arguments) {
        return run(arguments, Map.of());
    }

    private int run(String arguments, Map<String, String> properties) {
        said.reset();
        List<String> all = new ArrayList<>(Arrays.asList(arguments.split(" ")));
        all.addAll(List.of("--out", file.toString()));
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        return new TrainCommand(this::sessions, out).run(all.toArray(new String[0]), properties);
    }

    private List<Session> sessions(int count, long seed, int threads) {
        simulated++;
        return Invented.coasts(count, 1000 * seed);
    }

    private String said() {
        return said.toString(StandardCharsets.UTF_8);
    }

    @Test
    void the_file_says_how_it_was_made_and_is_made_again_to_the_bit() throws IOException {
        assertEquals(0, run(SMALL + " --networks 2 --threads 1"), this::said);
        List<String> first = Files.readAllLines(file);
        assertTrue(first.contains(
                "# data = 40 sessions, seed 1, version " + SessionFile.version(Invented.coasts(40, 1000))));
        assertTrue(first.get(1).startsWith("# command = mvn -q -Ptrain "), first.get(1));
        assertTrue(first.get(1).contains("-Dtrain.networks=2 "), first.get(1));
        assertEquals(2, first.stream().filter("network"::equals).count());
        assertTrue(first.stream().anyMatch(line -> line.startsWith("# validation of all together = pinball by dip")));
        assertTrue(first.stream().noneMatch(line -> line.contains(folder.toString())));
        assertEquals(0, run(SMALL + " --networks 2 --threads 3"));
        assertEquals(first, Files.readAllLines(file));
        assertEquals(0, run(SMALL + " --networks 2 --seed 2"));
        assertNotEquals(first.get(first.size() - 1), Files.readAllLines(file).get(first.size() - 1));
    }

    /** So weights that were trained beside others can be made again alone. */
    @Test
    void the_first_network_is_the_same_whether_others_follow_or_not() throws IOException {
        assertEquals(0, run(SMALL + " --networks 1 --threads 2"), this::said);
        List<String> alone = network(Files.readAllLines(file), 0);
        assertEquals(0, run(SMALL + " --networks 2 --threads 2"), this::said);
        List<String> both = Files.readAllLines(file);
        assertEquals(alone, network(both, 0));
        assertNotEquals(alone, network(both, 1));
    }

    /** The lines of one network, the word that begins it left out. */
    private static List<String> network(List<String> lines, int number) {
        List<List<String>> all = new ArrayList<>();
        for (String line : lines) {
            if (line.equals("network")) all.add(new ArrayList<>());
            else if (!all.isEmpty()) all.get(all.size() - 1).add(line);
        }
        return all.get(number);
    }

    /** The weights in the tree name options that there are, and all that count. */
    @Test
    void the_command_of_the_program_s_own_weights_is_understood() throws IOException {
        String command = own("# command = ");
        Map<String, String> properties = new HashMap<>();
        for (String word : command.split(" ")) {
            if (!word.startsWith("-Dtrain.")) continue;
            String[] option = word.substring("-D".length()).split("=", 2);
            properties.put(option[0], option[1]);
            assertTrue(TrainOptions.usage().contains("  --" + option[0].substring("train.".length()) + ": "), word);
        }
        TrainOptions options = TrainOptions.of(new String[] {"--out", "anywhere"}, properties);
        assertEquals(command, options.command());
        assertTrue(own("# data = ").startsWith(options.request() + ", version "));
    }

    private static String own(String key) throws IOException {
        try (InputStream in = TrainCommand.class.getResourceAsStream("/network/weights.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith(key))
                    .map(line -> line.substring(key.length()))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void the_best_pass_is_kept() throws IOException {
        assertEquals(0, run(SMALL + " --passes 12 --pace 0.1"), this::said);
        String least = said().lines()
                .filter(line -> line.startsWith("network 1 pass"))
                .min((a, b) -> Double.compare(pinball(a), pinball(b)))
                .orElseThrow();
        String pass = least.substring("network 1 pass ".length(), least.indexOf(':'));
        assertTrue(Files.readAllLines(file).stream().anyMatch(l -> l.startsWith("# network 1 = pass " + pass + ",")));
    }

    private static double pinball(String line) {
        return Double.parseDouble(line.replaceAll(".*by dip ([0-9.]+) K.*", "$1"));
    }

    @Test
    void sessions_are_kept_for_another_training_and_only_for_the_same() throws IOException {
        String kept = SMALL + " --cache " + folder.resolve("sessions");
        assertEquals(0, run(kept));
        List<String> first = Files.readAllLines(file);
        assertEquals(0, run(kept));
        assertEquals(first, Files.readAllLines(file));
        assertEquals(1, simulated);
        assertEquals(1, run(kept + " --seed 3"));
        assertTrue(said().contains("it holds sessions for '40 sessions, seed 1' where '40 sessions, seed 3'"), said());
        Files.writeString(folder.resolve("sessions"), "nothing of ours, and long enough to look like something");
        assertEquals(1, run(kept));
        assertTrue(said().contains("Delete the file or name another"), said());
        assertEquals(1, simulated);
    }

    @Test
    void no_pass_is_begun_when_time_is_over_and_the_file_says_so() throws IOException {
        assertEquals(0, run(SMALL + " --passes 50000 --networks 2 --minutes 0"));
        assertTrue(Files.readAllLines(file).stream().anyMatch(line -> line.startsWith("# cut short = by the clock")));
    }

    @Test
    void properties_count_where_no_argument_does() {
        assertEquals(0, run(SMALL, Map.of("train.networks", "2", "train.sessions", "30", "train.minutes", "")));
        assertTrue(said().contains("simulated 40 sessions"), said());
        assertTrue(said().contains("wrote 2 networks"), said());
    }

    @Test
    void what_is_not_understood_is_named() {
        assertEquals(2, run("--passes many"));
        assertEquals("--passes wants a whole number, not 'many'", said().strip());
        assertEquals(2, run("--steps 3"));
        assertTrue(said().startsWith("'--steps' is not known. Known are:"), said());
        assertTrue(said().contains("  --passes: passes through all sessions"), said());
        assertEquals(2, run("--units 0"));
        assertEquals(2, run("--pace"), this::said);
    }
}
