package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Usual;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.bowls.Taught;
import fifthform.monitor.catalogue.Recipes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
        Said real = said("learn");
        assertTrue(real.out().contains("1 practice or recorded session with looks is kept apart"), real::toString);
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

    @Test
    void whatDiffersIsSaidWithOneThingToTry() throws Exception {
        tenBatches();
        Said said = said("learn");
        assertTrue(
                said.out().contains("each batch once by its latest look from 24 h on: 5 marked, 5 fine."), said.out());
        assertTrue(said.out()
                .contains("Goes with marks: heat after the cool step. The middle of the 5 marked ones is 33."));
        assertTrue(said.out().contains("need not cause them"), said.out());
        assertEquals(
                2,
                said.out().split("One thing to try in the next batch: lift so early that it turns at 32", -1).length);
        assertTrue(said.out().contains("Not compared, known of too few batches or all alike: "), said.out());
        String json = said("learn", "--json").out();
        assertTrue(json.contains("\"comparison\":{\"says\":\"differs\",\"marked\":5,\"fine\":5"), json);
        assertTrue(json.contains("\"suggestion\":{\"what\":\"heat\",\"way\":\"at-most\",\"value\":32."), json);
        assertTrue(json.contains("\"bars\":\"marked\",\"traits\":{"), json);
        assertTrue(said("learn", "--units", "f").out().contains("it turns at 9"));
    }

    @Test
    void belowTheLeastCountOnlyWhatIsMissingIsSaid() throws Exception {
        looked(Origin.REAL, 31.6, "none");
        looked(Origin.REAL, 34, "streaks");
        Said said = said("learn");
        assertTrue(said.out().contains("What differs is not said: at least 5 of each are needed"), said.out());
        assertTrue(
                said.out().contains("Looks at 8 more batches are needed at the least (4 marked, 4 fine)"), said.out());
        assertFalse(said.out().contains("Goes with marks"), said.out());
        assertFalse(said.out().contains("One thing to try"), said.out());
        assertTrue(said("learn", "--json").out().contains("\"looks_needed\":8"));
        assertTrue(said("learn", "--json").out().contains("\"suggestion\":null"));
    }

    @Test
    void chocolatesAreNotMixed() throws Exception {
        for (double peak : new double[] {31.6, 32.3, 32.6, 32.8, 32.9}) looked(Origin.REAL, peak, "none");
        Recipe milk =
                Recipes.load(home.resolve("none")).builtIn("milk").orElseThrow().recipe();
        for (double peak : new double[] {33.2, 33.3, 33.5, 33.8, 34.2}) {
            said("look", batches.batch(milk, Origin.REAL, peak, 4), "--age", "24h", "--bloom", "streaks");
        }
        Said said = said("learn");
        assertTrue(said.out().contains("0 marked, 5 fine."), said.out());
        assertTrue(said.out().contains("5 marked, 0 fine."), said.out());
        assertFalse(said.out().contains("Goes with marks"), said.out());
    }

    @Test
    void aBatchCountsOnceHoweverOftenItIsThereAndLookedAt() throws Exception {
        String session = looked(Origin.REAL, 33.5, "none");
        said("look", session, "--age", "7d", "--bloom", "streaks");
        Path file = home.resolve("sessions").resolve(session + ".tempering.jsonl");
        Path looks = home.resolve("sessions").resolve(session + ".looks.jsonl");
        Files.copy(file, file.resolveSibling(session + "-copy.tempering.jsonl"));
        Files.copy(looks, looks.resolveSibling(session + "-copy.looks.jsonl"));
        Said said = said("learn");
        assertTrue(said.out().contains("1 batch looked at"), said.out());
        assertTrue(said.out().contains("1 marked, 0 fine."), said.out());
        assertTrue(
                said.err().contains(session + "-copy.tempering.jsonl: This is the same batch as " + session),
                said.err());
    }

    @Test
    void batchesOfOthersDoNotCount() throws Exception {
        looked(Origin.REAL, 31.6, "none");
        Path theirs = home.resolve("theirs");
        String sent = new BarSessions(theirs).batch(Origin.REAL, 34, 4);
        Path file = theirs.resolve("sessions").resolve(sent + ".tempering.jsonl");
        Said.by("look", sent, "--age", "24h", "--bloom", "streaks", "--data", theirs.toString());
        assertEquals(0, said("import", file.toString()).exit());
        assertTrue(Files.exists(home.resolve("sent").resolve(sent + ".looks.jsonl")));
        Said said = said("learn");
        assertTrue(said.out().contains("1 batch looked at"), said.out());
        assertTrue(said.out().contains("0 marked, 1 fine."), said.out());
    }

    @Test
    void anUnknownChocolateIsASlipAndNotTooFewLooks() throws Exception {
        looked(Origin.REAL, 31.6, "none");
        said("learn", "--chocolate", "drak")
                .refuses(
                        2, "--chocolate was \"drak\", and no recipe", "Nothing was learned.", "Say one of: dark, milk");
        Said known = said("learn", "--chocolate", "milk");
        assertEquals(0, known.exit());
        assertTrue(known.out().contains("no looks at bars of milk are kept yet"), known.out());
        assertTrue(known.out().contains("Looked at so far: dark."), known.out());
    }

    @Test
    void aSessionThatCannotBeReadIsNamedAndTheRestCounts() throws Exception {
        looked(Origin.REAL, 31.6, "none");
        String second = looked(Origin.REAL, 32.5, "none");
        Path file = home.resolve("sessions").resolve(second + ".tempering.jsonl");
        Files.writeString(file, "rubbish\n");
        Said said = said("learn");
        assertEquals(1, said.exit());
        assertTrue(said.err().contains(second), said.err());
        assertTrue(said.out().contains("1 batch looked at, 1 of use here."), said.out());
        assertEquals("rubbish\n", Files.readString(file));
    }

    @Test
    void ownBowlsStandBesideWithWhatTheyRestOn() throws Exception {
        Usual turn = Usual.NEVER.and(Math.log(20)).and(Math.log(22)).and(Math.log(25));
        Taught taught = new Taught(
                OptionalDouble.of(800),
                Optional.of(new LearnedCoast(60, 0.2, 9)),
                new BowlAnswers(turn, Usual.NEVER.and(Math.log(0.2)), Usual.NEVER),
                3,
                Instant.parse("2026-01-10T10:00:00Z"),
                Optional.empty());
        new Bowls(home.resolve("bowls"))
                .keep(KeptBowl.named("Demo steel", BowlMaterial.STEEL).taught(taught));
        looked(Origin.REAL, 31.6, "none");
        String out = said("learn").out();
        assertTrue(
                out.contains(
                        "  Demo steel, 800 g: coasts about 1.0 °C at 1.0 °C/min, 9 times in 10 between 0.7 °C and 1.4 °C,"
                                + " a coast time of 60 s (43 to 83 s)"),
                out);
        // ln 20, 22, 25: mean 3.0882, s 0.1118, t(0.95, 2) = 2.920: 21.9 s and a factor of 1.2075 either way.
        assertTrue(out.contains("falls in full after 22 s (9 times in 10 18 to 27 s), 3 batches"), out);
        assertTrue(out.contains("a time constant of 5.0 min (from too few batches to say how surely), 1 batch"), out);
        assertTrue(out.contains("9 lifts in 3 batches."), out);
        String json = said("learn", "--json").out();
        assertTrue(json.contains("{\"bowl\":\"demo-steel\",\"amount_g\":800,\"coast_s\":60"), json);
        assertFalse(said("learn", "--practice").out().contains("Demo steel"));
    }

    @Test
    void whatWasReadOnceIsNotReadAgainUntilItChanges() throws Exception {
        String session = looked(Origin.REAL, 33.5, "none");
        Path index = home.resolve("learned.index");
        String first = said("learn", "--json").out();
        String kept = Files.readString(index);
        assertTrue(kept.contains("\"file\":\"" + session), kept);
        assertEquals(first, said("learn", "--json").out());
        assertEquals(kept, Files.readString(index));

        // Where it is spoilt, forged or gone the sessions are read anew; the answer stays.
        Files.writeString(index, kept.replace("\"cool-minutes\":", "\"cool-minutes\":1"));
        assertEquals(first, said("learn", "--json").out());
        assertEquals(kept, Files.readString(index));
        Files.write(index, new byte[] {(byte) 0xff, 10, 7});
        assertEquals(first, said("learn", "--json").out());
        Files.delete(index);
        assertEquals(first, said("learn", "--json").out());

        // A session that changed is read, and one that is damaged is told each time.
        Path file = home.resolve("sessions").resolve(session + ".tempering.jsonl");
        Files.writeString(file, Files.readString(file) + "rubbish\n");
        for (int i = 0; i < 2; i++) {
            Said damaged = said("learn");
            assertEquals(1, damaged.exit());
            assertTrue(damaged.err().contains(session), damaged.err());
        }
        assertTrue(said("learn", "--sessions", home.resolve("sessions").toString())
                .out()
                .contains("1 batch looked at"));
    }
}
