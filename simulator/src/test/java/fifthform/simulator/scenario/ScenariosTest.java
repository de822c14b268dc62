package fifthform.simulator.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Parsed;
import fifthform.simulator.bowl.HeatLedger;
import fifthform.simulator.device.RunningKitchen;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ScenariosTest {
    static Set<String> ids() {
        return Scenarios.builtIn().ids();
    }

    @Test
    void theFolderIsListed() {
        assertTrue(ids().containsAll(Set.of("first-light", "own-way", "glass-bowl", "unplugged", "milk")));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyOneIsAcceptedAndSaysThatItIsInvented(String id) {
        Scenario scenario = Scenarios.builtIn().find(id).fold(s -> s, problems -> {
            throw new AssertionError(problems);
        });
        assertEquals(id, scenario.id());
        assertTrue(scenario.demo().contains("invented"));
    }

    /** What is stored changes by what crossed the border, within a thousandth, whatever the scenario does. */
    @ParameterizedTest
    @MethodSource("ids")
    void theHeatOfEveryOneIsAccountedFor(String id) {
        Scenario scenario = Scenarios.builtIn().find(id).fold(s -> s, problems -> {
            throw new AssertionError(problems);
        });
        Instant begins = Instant.parse("2026-01-10T09:00:00Z");
        RunningKitchen running = scenario.start(begins);
        double before = scenario.kitchen().storedJoules(running.state());
        running.advanceTo(begins.plus(Duration.ofHours(3)));
        double stored = scenario.kitchen().storedJoules(running.state()) - before;
        HeatLedger ledger = running.state().ledger();
        assertTrue(running.done() && ledger.movedJoules() > 100_000, "nothing happened: " + ledger);
        assertEquals(stored, ledger.netJoules(), 0.001 * ledger.movedJoules());
    }

    @Test
    void anUnknownNameGetsTheNearest() {
        Parsed<Scenario> found = Scenarios.builtIn().find("first-lihgt");
        String told = found.fold(s -> "accepted", Object::toString);
        assertTrue(told.contains("Did you mean \"first-light\"?"), told);
    }

    /** As packed by a tool that writes no entries for folders, while somebody else has the jar open. */
    @Test
    void theFolderIsListedInsideAJarToo(@TempDir Path folder) throws IOException {
        Path jar = folder.resolve("with space.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out)) {
            for (String name : new String[] {"scenarios/a.txt", "scenarios/b.txt", "scenarios/c.md", "other/d.txt"}) {
                entries.putNextEntry(new JarEntry(name));
                entries.write(name.getBytes(StandardCharsets.UTF_8));
                entries.closeEntry();
            }
        }
        URI known = URI.create("jar:" + jar.toUri() + "!/scenarios/a.txt");
        Map<String, String> once = Scenarios.textsBeside(known.toURL());
        Map<String, String> twice = Scenarios.textsBeside(known.toURL());
        assertEquals(Map.of("a", "scenarios/a.txt", "b", "scenarios/b.txt"), once);
        assertEquals(once, twice);
    }
}
