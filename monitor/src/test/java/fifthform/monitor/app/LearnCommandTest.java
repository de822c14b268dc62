package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Origin;
import fifthform.monitor.catalogue.Recipes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What recorded batches and looks at their bars say together. */
class LearnCommandTest {
    @TempDir
    Path home;

    private BarSessions batches;

    @BeforeEach
    void begin() {
        batches = new BarSessions(home);
    }

    private Said said(String command, String... words) {
        List<String> arguments = new ArrayList<>(List.of(command));
        arguments.addAll(List.of(words));
        arguments.addAll(List.of("--data", home.toString()));
        return Said.by(arguments.toArray(String[]::new));
    }

    private String looked(Origin origin, double peakCelsius, String bloom) throws Exception {
        String session = batches.batch(origin, peakCelsius, 4);
        said("look", session, "--age", "24h", "--bloom", bloom);
        return session;
    }

    /** Harm from about 33.1 °C on, in ten batches. */
    private void tenBatches() throws Exception {
        for (double peak : new double[] {31.6, 32.3, 32.6, 32.8, 32.9}) looked(Origin.REAL, peak, "none");
        for (double peak : new double[] {33.2, 33.3, 33.5, 33.8, 34.2}) looked(Origin.REAL, peak, "streaks");
    }

    @Test
    void withoutLooksItSaysWhatToDo() {
        Said said = said("learn");
        assertEquals(0, said.exit());
        assertTrue(said.out().startsWith("Too few batches"), said.out());
        assertTrue(said.out().contains("monitor/run look last"), said.out());
    }

    @Test
    void fewBatchesAreListedAndNothingIsClaimed() throws Exception {
        looked(Origin.REAL, 31.6, "none");
        looked(Origin.REAL, 34, "streaks");
        Said said = said("learn");
        assertTrue(said.out().contains("never above the range"), said.out());
        assertTrue(said.out().contains("marks after 24 h"), said.out());
        assertTrue(said.out().contains("Too few batches: 2 of use, and at least 6 are needed."), said.out());
        assertTrue(said.out().contains("33.8 °C stays in force."), said.out());
    }

    @Test
    void practiceIsKeptApart() throws Exception {
        looked(Origin.SIMULATED, 31.6, "none");
        assertTrue(said("learn").out().contains("1 practice or recorded session with looks is kept apart"));
        assertTrue(said("learn", "--practice").out().contains("practice: 1 batch looked at, 1 of use here."));
        looked(Origin.REAL, 31.6, "none");
        assertTrue(said("learn").out().contains("(dark): 1 batch looked at"));
        assertTrue(said("learn", "--practice").out().contains("practice: 1 batch looked at"));
    }

    @Test
    void theLimitIsSaidBesideThePublishedOneAndChangesNothing() throws Exception {
        tenBatches();
        Said said = said("learn");
        assertTrue(said.out().contains("In your last 10 batches harm began near 33.1 °C (9 times in 10 "), said.out());
        assertTrue(said.out().contains("stays in force. To work by your own: monitor/run learn"), said.out());
        Said json = said("learn", "--json");
        assertTrue(json.out().contains("\"says\":\"limit\",\"limit_c\":33."), json.out());
        assertTrue(json.out().contains("\"published_c\":33.8,\"in_force_c\":33.8"), json.out());
        assertEquals(10, json.out().split("\"session\"", -1).length - 1);
        assertFalse(Files.exists(home.resolve("recipes")));
    }

    @Test
    void onlyAnActOfTheMakerMakesItCount() throws Exception {
        tenBatches();
        Said written = said("learn", "--chocolate", "dark", "--write", "my-dark");
        assertEquals(0, written.exit(), written.err());
        assertTrue(written.out().contains("--chocolate my-dark"), written.out());
        Path file = home.resolve("recipes/my-dark.recipe");
        String text = Files.readString(file);
        assertTrue(text.contains("# own batches of dark, 10, "), text);
        Recipe own = Recipes.read(file).fold(known -> known.recipe(), problems -> fail(problems.toString()));
        assertEquals(33.1, own.meltOut().limitCelsius(), 0.15);
        said("learn", "--chocolate", "dark", "--write", "my-dark")
                .refuses(4, "is there already", "Nothing was written.", "Give another id");
        assertEquals(text, Files.readString(file));
        assertEquals(0, said("recipes", "check", file.toString()).exit());

        // Batches by the own recipe go on teaching the same chocolate, by the same scale.
        String next = batches.batch(own, Origin.REAL, 32.4, 4);
        said("look", next, "--age", "7d", "--bloom", "none");
        Said more = said("learn", "--chocolate", "my-dark");
        assertTrue(more.out().contains("(dark): 11 batches looked at, 11 of use here."), more.out());
        assertTrue(more.out().contains("33.8 °C stays in force"), more.out());
    }

    @Test
    void anOwnRecipeOfTheSameIdIsSaidToBeInForce() throws Exception {
        tenBatches();
        assertEquals(0, said("learn", "--chocolate", "dark", "--write", "dark").exit());
        Said said = said("learn");
        assertTrue(said.out().contains("The published limit 33.8 °C stands beside 33."), said.out());
        assertTrue(said.out().contains("of your own recipe, which is in force."), said.out());
    }

    @Test
    void whatDoesNotCountSaysWhy() throws Exception {
        String uncooled = batches.batch(Origin.REAL, 33, 1);
        said("look", uncooled, "--age", "24h", "--bloom", "veil");
        looked(Origin.REAL, 33, "sugar");
        String early = batches.batch(Origin.REAL, 33, 4);
        said("look", early, "--age", "2h", "--bloom", "none");
        String out = said("learn").out();
        assertTrue(out.contains("3 batches looked at, 0 of use here."), out);
        assertTrue(out.contains("it was not held cool for long enough"), out);
        assertTrue(out.contains("what was seen has another cause"), out);
        assertTrue(out.contains("looked at too early"), out);
    }

    @Test
    void aDamagedFileIsSaidAndTheRestCounts() throws Exception {
        looked(Origin.REAL, 31.6, "none");
        String second = looked(Origin.REAL, 32.5, "none");
        Files.writeString(home.resolve("sessions").resolve(second + ".looks.jsonl"), "rubbish\n");
        Said said = said("learn");
        assertEquals(1, said.exit());
        assertTrue(said.err().contains("line 1: This look cannot be read"), said.err());
        assertTrue(said.out().contains("1 batch looked at, 1 of use here."), said.out());
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws Exception {
        said("learn", "--write", "x").refuses(2, "without --chocolate", "Nothing was written.", "--chocolate dark");
        said("learn", "--chocolate", "dark", "--write", "My dark")
                .refuses(2, "--write was \"My dark\"", "Nothing was written.", "my-dark");
        said("learn", "--chocolate", "dark", "--practice", "--write", "x")
                .refuses(2, "--write was given with --practice", "Nothing was written.", "leave --practice out");
        said("learn", "--chocolate", "dark", "--write", "x")
                .refuses(1, "No looks at bars of dark are kept.", "Nothing was written.", "monitor/run look last");
        looked(Origin.REAL, 31.6, "none");
        Said few = said("learn", "--chocolate", "dark", "--write", "x");
        few.refuses(1, "show no limit of your own (too-few-batches)", "", "Look at more batches");
        said("learn", "--sessions", home.resolve("no").toString())
                .refuses(4, "is no folder", "Nothing was learned.", "Name one");
    }
}
