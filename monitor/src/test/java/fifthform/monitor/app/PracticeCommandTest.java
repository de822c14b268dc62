package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenarios;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What there is to practise on, and batches in no time. */
@Timeout(120)
class PracticeCommandTest {
    @TempDir
    Path home;

    @Test
    void everyScenarioAndMakerHasOneLine() {
        Said people = Said.by("practice");
        Said scripts = Said.by("practice", "--json");
        assertEquals(0, people.exit(), people.err());
        for (String id : Scenarios.builtIn().ids()) {
            assertFalse(lines(people, "  " + id + " ").isEmpty(), id);
            assertEquals(1, lines(scripts, "{\"scenario\":\"" + id + "\"").size(), id);
        }
        for (MakerKind kind : MakerKind.values()) {
            assertTrue(lines(people, "  " + kind.word() + " ").stream().anyMatch(l -> l.contains(kind.about())));
            assertEquals(1, lines(scripts, "{\"maker\":\"" + kind.word() + "\"").size());
        }
    }

    @Test
    void batchesEndTheSameEachTimeAndAMakerChangesHowTheyEnd() {
        Said obeyed = run("first-light", "--times", "3", "--json");
        assertEquals(4, obeyed.out().lines().count(), obeyed.out());
        assertTrue(obeyed.out().contains("\"landed\":\"in-range\""), obeyed.out());
        assertTrue(obeyed.out().contains("\"summary\":{\"batches\":3,"), obeyed.out());
        assertEquals(obeyed.out(), run("first-light", "--times", "3", "--json").out());

        Said alone = run("first-light", "--maker", "own-way", "--times", "3", "--json");
        assertTrue(alone.out().contains("\"maker\":\"own-way\""), alone.out());
        assertFalse(alone.out().contains("\"landed\":\"in-range\""), alone.out());
    }

    @Test
    void peopleAreToldThatItIsInvented() {
        Said said = run("milk", "--times", "1");
        assertTrue(said.out().contains("(milk), milk, tempered by follows-cues"), said.out());
        assertTrue(said.out().contains("All of it is invented"), said.out());
        assertTrue(said.out().contains("in-range        100.0 %"), said.out());
    }

    @Test
    void whatCannotBeRunIsSaidWithTheNearestName() {
        run("first-lihgt").refuses(2, "\"first-lihgt\"", "no practice scenario", "Did you mean \"first-light\"");
        run("milk", "--maker", "nobody").refuses(2, "nobody", "Nothing was done.", "Known: follows-cues");
        run("milk", "--times", "0").refuses(2, "--times was 0", "Nothing was done.", "Give 1 to 100000");
        Said.by("practice", "serve", "milk", "--port", home.resolve("ttyDEMO").toString())
                .refuses(3, "There is no port", "No reading can be taken.", "Plug the adapter in");
    }

    private Said run(String scenario, String... more) {
        List<String> all = new java.util.ArrayList<>(List.of("practice", "run", scenario));
        all.addAll(List.of(more));
        all.addAll(List.of("--data", home.toString()));
        return Said.by(all.toArray(String[]::new));
    }

    private static List<String> lines(Said said, String beginning) {
        return said.out().lines().filter(l -> l.startsWith(beginning)).toList();
    }
}
