package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.input.AlarmId;
import fifthform.simulator.scenario.Expected;
import fifthform.simulator.scenario.Scenarios;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Scenarios through the real program, several at once since practice runs at most at sixty times life: each ends as its
 * file says. A third of them in every build; {@code -Dscenarios=all} watches every one, {@code -Dscenarios=ID,ID} these.
 */
@Timeout(900)
class PractisedScenariosTest {
    private static final int AT_ONCE = Integer.getInteger("scenarios.at.once", 12);

    @TempDir
    static Path home;

    private static final Map<String, Future<Integer>> EXITS = new TreeMap<>();
    private static ExecutorService hands;
    private static PrintStream wasOut;

    static List<String> ids() {
        List<String> all = new ArrayList<>(Scenarios.builtIn().ids());
        String asked = System.getProperty("scenarios", "");
        if (asked.equals("all")) return all;
        if (!asked.isEmpty()) return List.of(asked.split(","));
        Collections.shuffle(all, new Random(4));
        return all.subList(0, all.size() / 3);
    }

    @BeforeAll
    static void watchThem() {
        wasOut = System.out;
        System.setOut(new PrintStream(OutputStream.nullOutputStream()));
        hands = Executors.newFixedThreadPool(AT_ONCE);
        for (String id : ids()) EXITS.put(id, hands.submit(() -> watched(id)));
    }

    private static int watched(String id) {
        return Main.run(
                "watch",
                "--probe",
                "practice:" + id,
                "--speed",
                "max",
                "--screen",
                "none",
                "--record",
                home.resolve(id).toString());
    }

    @AfterAll
    static void end() {
        hands.shutdownNow();
        System.setOut(wasOut);
    }

    @ParameterizedTest
    @MethodSource("ids")
    void endsAsItsFileSays(String id) throws Exception {
        assertEquals(0, EXITS.get(id).get());
        Expected expected = Scenarios.builtIn().find(id).fold(s -> s.expected(), problems -> {
            throw new AssertionError(problems);
        });
        String told = Program.text(session(id));
        Set<String> raised = new TreeSet<>(found(told, "\"e\":\"alarm-raised\",\"alarm\":\"([a-z-]+)\""));
        expected.verdict()
                .ifPresent(verdict -> assertEquals(
                        List.of(verdict.word()),
                        found(told, "\"k\":\"z\".*\"verdict\":\"([a-z-]+)\""),
                        "raised " + raised));
        assertEquals(Set.of(), without(words(expected.raises()), raised), "not raised; raised were " + raised);
        Set<String> unwanted = words(expected.raisesNot());
        unwanted.retainAll(raised);
        assertEquals(Set.of(), unwanted, "raised");
    }

    private static Set<String> words(Set<AlarmId> alarms) {
        Set<String> words = new TreeSet<>();
        alarms.forEach(alarm -> words.add(alarm.word()));
        return words;
    }

    private static Set<String> without(Set<String> some, Set<String> others) {
        Set<String> left = new TreeSet<>(some);
        left.removeAll(others);
        return left;
    }

    private static List<String> found(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(match -> match.group(1))
                .toList();
    }

    private static Path session(String id) {
        try (Stream<Path> files = Files.list(home.resolve(id))) {
            return files.filter(f -> f.toString().endsWith(".tempering.jsonl"))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
