package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Origin;
import fifthform.monitor.model.Key;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Kitchen;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.monitor.practice.PracticePace;
import fifthform.monitor.settings.Units;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A whole training, its keys pressed by a screen that reads the band and types. */
@Timeout(120)
class PracticeTrainTest {
    /** So that 40 minutes of kitchen take some ten seconds, with 5 ms of this computer being a second of kitchen. */
    private static final double SPEED = 200;

    @TempDir
    Path home;

    private final StringWriter out = new StringWriter();

    @Test
    void keysTemperABowlToItsDebrief() throws Exception {
        Typist typist = new Typist();
        train(typist);
        assertEquals(List.of(), typist.wrong);
        assertTrue(typist.debrief.band().headline().contains("hottest after the cool"), typist.debrief.band() + "");
        assertTrue(typist.debrief.band().aside().startsWith("Next time: "), typist.debrief.band() + "");
        assertEquals(Optional.of("Q closes"), typist.debrief.undo());

        String said = out.toString();
        assertTrue(said.startsWith("Practice batch (simulated), Dark"), said);
        assertTrue(said.contains("Debrief. These are the true temperatures of the simulated chocolate"), said);
        assertTrue(said.contains("Coolest before the rewarm 2"), said);
        // The moment of the lift is the typist's: a busy computer moves it by some tenths of a kelvin, no further.
        Matcher lift = Pattern.compile("Lift 1 at (\\d+\\.\\d) °C").matcher(said);
        assertTrue(lift.find(), said);
        assertEquals(30.3, Double.parseDouble(lift.group(1)), 1.0, said);
        assertTrue(said.contains("the screen had said 3"), said);
        assertTrue(said.contains("off the hot water ") && said.contains("lift "), said);
        assertTrue(said.contains("dried once"), said);
        assertTrue(said.contains("Next time: "), said);

        Path file = session();

        Recording kept = Recording.of(file);
        assertEquals(Origin.SIMULATED, kept.session().header().setup().origin());
        assertTrue(kept.session().isClosed());
        String journal = Files.readString(file);
        for (String act : List.of("\"seed", "cold-water", "stirred")) assertTrue(journal.contains(act), act);
    }

    @Test
    void aBowlLeftAloneEndsAsOneThatNeverCameToARewarm() throws Exception {
        train((wished, feed, elapsed) -> {
            press(feed, Key.QUIT, Key.QUIT);
            while (!feed.pictureNow().band().headline().equals("It ended before it was warmed again")) Thread.sleep(5);
            press(feed, Key.QUIT);
            while (!feed.finished().getAsBoolean()) Thread.sleep(5);
        });
        assertTrue(out.toString().contains("It never was in cold water."), out.toString());
        assertTrue(out.toString().contains("the key “step done” does what stands on the screen"), out.toString());
    }

    @Test
    void withoutKeysNothingIsBegun() {
        Said.by("practice", "train", "first-light", "--screen", "lines", "--data", home.toString())
                .refuses(2, "Training needs keys", "Nothing was done.", "display or a terminal");
        Said.by("practice", "train", "first-light", "--screen", "terminal", "--speed", "11")
                .refuses(2, "--speed was 11", "Nothing was done.", "1 to 10");
    }

    private void train(Showing screen) throws Exception {
        CommandLine line = FifthForm.line();
        line.setOut(new PrintWriter(out, true));
        line.parseArgs("practice", "train", "first-light", "--lift", "one", "--data", home.toString());
        PracticeCommand practice = line.getSubcommands().get("practice").getCommand();
        PracticeTrainCommand train = line.getSubcommands()
                .get("practice")
                .getSubcommands()
                .get("train")
                .getCommand();
        var scenario = PracticeCommand.named("first-light");
        train.train(
                new TrainingProbe(scenario, practice.recipe(scenario), SPEED, PracticePace.AtCues.GO_ON),
                Units.CELSIUS,
                Choices.USUAL,
                screen);
    }

    private Path session() throws Exception {
        try (Stream<Path> files = Files.list(home.resolve("sessions"))) {
            return files.filter(f -> f.toString().endsWith(".jsonl"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static void press(ScreenFeed feed, Key... keys) {
        for (Key key : keys) feed.keys().accept(key);
    }

    /** Presses Enter at each filled band, and has thrown seed in, dried and stirred before. */
    private static final class Typist implements Showing {
        private final List<String> wrong = new ArrayList<>();
        private WatchPicture debrief;

        @Override
        public void show(Optional<ScreenChoice> wished, ScreenFeed feed, Supplier<Duration> elapsed)
                throws InterruptedException {
            press(feed, Key.STIR);
            String done = "";
            boolean seeded = false;
            boolean dried = false;
            while (!feed.pictureNow().undo().equals(Optional.of("Q closes"))) {
                WatchPicture picture = feed.pictureNow();
                if (picture.kitchen() != Kitchen.TRAINING) wrong.add("kitchen " + picture.kitchen());
                String headline = picture.band().headline();
                // In a cool kitchen an alarm may stand over the cue that ends the hold; the clock tells as well.
                boolean held = picture.heading().startsWith("seed · 6 min");
                boolean due = held || picture.band().tone() == Tone.CUE && !headline.startsWith("Get ready");
                if (due && !headline.equals(done)) {
                    press(feed, Key.STEP_DONE);
                    done = headline;
                    if (picture.heading().startsWith("rewarm") && !dried) {
                        press(feed, Key.DRY);
                        dried = true;
                    }
                    if (picture.heading().startsWith("work")) press(feed, Key.QUIT, Key.QUIT);
                }
                if (!due) done = "";
                if (!seeded && picture.heading().startsWith("cool")) {
                    seeded = true;
                    press(feed, Key.SEED);
                    for (char typed : "5\r".toCharArray())
                        if (!feed.letters().takes(typed)) wrong.add("not taken: " + typed);
                }
                Thread.sleep(3);
            }
            debrief = feed.pictureNow();
            press(feed, Key.QUIT);
            while (!feed.finished().getAsBoolean()) Thread.sleep(5);
        }
    }
}
