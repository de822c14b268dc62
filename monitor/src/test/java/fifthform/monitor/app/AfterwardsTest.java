package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Origin;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** After the moulds are filled: set, store and why, as they are typed. */
class AfterwardsTest {
    @TempDir
    Path home;

    private Said say(String words) {
        List<String> arguments = new ArrayList<>(List.of(words.split(" ")));
        arguments.addAll(List.of("--data", home.toString()));
        return Said.by(arguments.toArray(String[]::new));
    }

    @Test
    void settingIsLedWithoutAProbe() {
        Said said = say("set --place fridge --there 9 --room 22 --humidity 55 --thickness 8");
        assertEquals(0, said.exit(), said.err());
        assertTrue(said.out().contains("dew point of your room is 12.5 °C"), said.out());
        assertTrue(said.out().contains("pull away from the mould"), said.out());
        assertTrue(said.out().contains("leave it closed for about"), said.out());
        assertTrue(say("set --place room --there 25").out().contains("they do not set"));
        say("set --place oven").refuses(2, "--place was \"oven\"", "Nothing was done.", "fridge");
        say("set --room 22").refuses(2, "--room and --humidity", "Nothing was done.", "both");
        say("set --thickness 0").refuses(2, "--thickness was 0.", "Nothing was done.", "1 to 100 mm");
    }

    @Test
    void aPractisedFridgeEndsWithBarsThatMayBeOpened() {
        Said said = say("set --place fridge --room 22 --humidity 55 --probe practice --json");
        assertEquals(0, said.exit(), said.err());
        List<String> told = said.out().lines().toList();
        assertTrue(told.get(0).contains("\"e\":\"begun\""), said.out());
        assertTrue(said.out().contains("\"e\":\"keep-closed\""), said.out());
        assertTrue(told.get(told.size() - 1).contains("\"e\":\"may-open\""), said.out());
        assertTrue(said.err().contains("SAFETY.md"), said.err());
        assertTrue(say("set --probe practice:freezer --json").out().contains("too-cold"));
    }

    @Test
    void aPractisedSummerIsWarnedOfBeforeItIsWarmAndACupboardIsNot() {
        Said summer = say("store --probe practice:summer --json");
        assertEquals(0, summer.exit(), summer.err());
        int near = summer.out().indexOf("\"e\":\"nearly-warm\"");
        int warm = summer.out().indexOf("\"e\":\"warm\"");
        assertTrue(near > 0 && warm > near, near + ", " + warm);
        assertTrue(summer.out().contains("\"above_24_h\":"));
        Said cupboard = say("store --probe practice:cupboard --json");
        assertFalse(
                cupboard.out().contains("\"k\":\"e\""),
                cupboard.out().lines().filter(l -> l.contains("\"e\"")).toList().toString());
        say("store --probe practice:attic")
                .refuses(2, "no practice place \"attic\"", "Nothing was done.", "practice:summer");
    }

    @Test
    void aBestBeforeIsTheMakersOwnNote() throws Exception {
        String session = new BarSessions(home).batch(Origin.REAL, 31.6, 4);
        Said kept = say("store last --best-before 2026-09-01");
        assertTrue(kept.out().contains("your own note and no statement of safety"), kept.out());
        assertTrue(say("store last --show").out().contains("Best before 2026-09-01."));
        assertTrue(Files.exists(home.resolve("sessions").resolve(session + ".store.jsonl")));
        say("store " + session + ".store.jsonl --best-before soon")
                .refuses(4, "how bars were kept", "Nothing was done.", "last");
    }

    @Test
    void anOvershootIsFoundInTheBatchsOwnCurve() throws Exception {
        new BarSessions(home).batch(Origin.REAL, 35.2, 8);
        assertTrue(say("why last").out().contains("Nobody has looked at these bars yet"));
        say("look last --age 24h --bloom streaks --snap soft --gloss dull --release tapped");
        Said why = say("why last");
        assertEquals(0, why.exit(), why.err());
        assertTrue(why.out().startsWith("Most likely:"), why.out());
        assertTrue(why.out().contains("1. The good crystals melted"), why.out());
        assertTrue(why.out().contains("next time: lift earlier"), why.out());
        assertTrue(why.out().contains("allergens too"), why.out());
        Said json = say("why last --json");
        assertTrue(json.out().contains("\"word\":\"likely\",\"suspects\":[{\"fault\":\"overshot\""), json.out());
    }

    @Test
    void goodBarsAreGivenNoCauseAndWaterIsTheMakersWord() throws Exception {
        String good = new BarSessions(home).batch(Origin.REAL, 31.6, 8);
        say("look last --age 24h --bloom none --snap clean --gloss bright");
        assertTrue(say("why last").out().startsWith("These bars are good"));
        say("look last --age 48h --bloom none --snap soft --gloss dull --release some-stuck");
        Said why = say("why " + good + " --yes water --no mould-cold,mould-dirty");
        assertTrue(why.out().contains("1. Water or steam got into the chocolate"), why.out());
        assertTrue(why.out().contains("it cannot be tempered again"), why.out());
        // An answer is kept: it is not asked a second time.
        assertTrue(say("why last").out().contains("1. Water or steam"));
        say("why last --yes rain").refuses(2, "--yes was \"rain\"", "Nothing was done.", "water");
    }
}
