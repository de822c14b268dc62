package fifthform.monitor.app;

import static fifthform.monitor.view.OnScreen.read;
import static fifthform.monitor.view.OnScreen.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.practice.PracticePace.AtCues;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Motion;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.Units;
import fifthform.monitor.start.StartChoice;
import fifthform.monitor.start.StartChoice.Way;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.view.LentStage;
import fifthform.monitor.view.NeedsScreen;
import fifthform.monitor.view.Theme;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A whole practice batch in the window, by nothing but keys: from the start page to its verdict in the replay. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
@Timeout(300)
class PracticeByKeysTest {
    /** A batch of three quarters of an hour in some twenty seconds. */
    private static final double SPEED = 120;

    private static final Pattern HEADING = Pattern.compile(".*\\|(melt|cool|seed|rewarm|work|rest) · .*");

    @TempDir
    Path home;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Stage stage;
    private LentStage window;
    private boolean seeded;
    private boolean stirred;
    private boolean undone;
    private boolean noted;
    private boolean slowed;
    private String answered = "";
    private long answeredNanos;
    private final List<String> seen = new ArrayList<>();

    @Start
    void lend(Stage given) {
        stage = given;
        window = LentStage.lend(given);
    }

    @AfterEach
    void takeBack() {
        LentStage.takeBack();
    }

    @Test
    void fromTheStartPageToTheVerdict(FxRobot robot) throws Exception {
        Folders folders = Folders.of("Linux", Map.of(), home);
        CompletableFuture<Optional<String>> program = CompletableFuture.supplyAsync(() -> {
            try {
                return new Starting(folders, Choices.USUAL, Units.CELSIUS, Optional.empty()).onThePage(begin(folders));
            } catch (Refusal | InterruptedException failed) {
                throw new IllegalStateException(failed);
            }
        });
        until(() -> window.shows("Start a batch"));
        robot.type(KeyCode.ENTER, KeyCode.ENTER);
        until(() -> window.shows("Practise: your hands"));
        // The last row, whatever is plugged in here.
        robot.type(KeyCode.UP);
        // An adapter that shows meanwhile takes the choice to itself; no row but the last is own hands.
        robot.type(KeyCode.ENTER);
        until(() -> window.shows("practice · simulated bowl"));
        while (!window.shows("Q closes")) {
            assertFalse(program.isDone(), () -> "it ended too soon: " + err);
            answer(robot);
            Thread.sleep(10);
        }
        robot.write("q");
        assertEquals(Optional.empty(), program.get(60, TimeUnit.SECONDS));
        assertTrue(
                seeded && stirred && undone && noted,
                () -> "stirred " + stirred + ", undone " + undone + ", seeded " + seeded + ", noted " + noted + ": "
                        + seen);
        LentStage.lend(stage);
        onDiskAndInReplay(folders, robot);
    }

    /** The command itself: a page where nothing was said, practice by one key, and back out. */
    @Test
    void theCommandOpensThePageAndPractises(FxRobot robot) throws Exception {
        CompletableFuture<Said> program =
                CompletableFuture.supplyAsync(() -> Said.by("watch", "--screen", "window", "--data", home.toString()));
        until(() -> window.shows("Start a batch"));
        robot.write("x");
        until(() -> window.shows("practice · simulated bowl"));
        robot.write("qq");
        Said said = program.get(60, TimeUnit.SECONDS);
        assertEquals(0, said.exit(), said::err);
        assertTrue(said.out().contains("Kept in "), said::out);
    }

    /** What cannot be started is said on the page; closing the page starts nothing. */
    @Test
    void aRefusalStandsOnThePage(FxRobot robot) throws Exception {
        CompletableFuture<Said> program = CompletableFuture.supplyAsync(
                () -> Said.by("watch", "--screen", "window", "--speed", "200", "--data", home.toString()));
        until(() -> window.shows("Start a batch"));
        robot.write("x");
        until(() -> window.shows("--speed was 200"));
        robot.write("q");
        assertEquals(0, program.get(60, TimeUnit.SECONDS).exit());
        assertFalse(Files.exists(home.resolve("sessions")), "something was recorded");
    }

    /** As somebody at the stove would: what the band says, and now and then a key of one's own. */
    private void answer(FxRobot robot) {
        String phase = phase();
        Optional<String> due = window.due();
        if (!phase.isEmpty() && (seen.isEmpty() || !seen.get(seen.size() - 1).equals(phase))) seen.add(phase);
        if (!stirred && phase.equals("melt")) {
            robot.write("s");
            stirred = true;
        } else if (!undone && phase.equals("melt")) {
            // A move is taken back within seconds of the bowl's time: so at nearly the speed of life.
            robot.write("------pu++++++");
            undone = true;
        } else if (!seeded && phase.equals("seed")) {
            robot.write("g");
            robot.write("5");
            robot.type(KeyCode.ENTER);
            seeded = true;
        } else if (!slowed && phase.equals("rewarm")) {
            // As anybody would who wants to lift in time: eight times slower.
            robot.write("---");
            slowed = true;
        } else if (!noted && slowed && !phase.isEmpty() && !phase.equals("rewarm")) {
            // Poured, or on a computer too busy to lift in time spoilt: noted, and over.
            robot.write("n");
            noted = true;
            robot.write("qq");
        } else if (due.isPresent() && !due.get().startsWith("Get ready") && isUnanswered(due.get())) {
            robot.type(KeyCode.ENTER);
            answered = due.get();
            answeredNanos = System.nanoTime();
        }
        if (due.isEmpty()) answered = "";
    }

    /** Once, and again where the step still stands after some seconds: a busy computer may lose a press. */
    private boolean isUnanswered(String due) {
        return !due.equals(answered) || System.nanoTime() - answeredNanos > TimeUnit.SECONDS.toNanos(3);
    }

    /** As the top line has it. */
    private String phase() {
        return window.texts().stream()
                .map(HEADING::matcher)
                .filter(Matcher::matches)
                .map(heading -> heading.group(1))
                .findFirst()
                .orElse("");
    }

    private void onDiskAndInReplay(Folders folders, FxRobot robot) throws Exception {
        Path file;
        try (Stream<Path> files = Files.list(folders.sessions())) {
            file = files.filter(f -> f.toString().endsWith(".jsonl"))
                    .findFirst()
                    .orElseThrow();
        }
        Recording kept = Recording.of(file);
        assertEquals(Origin.SIMULATED, kept.session().header().setup().origin());
        assertTrue(kept.session().isClosed());
        String journal = Files.readString(file);
        for (String act : List.of("bowl-moved", "\"undone\"", "stirred", "\"noted\"", "seed-added"))
            assertTrue(journal.contains(act), act + " is not in " + file);
        CompletableFuture<Said> replay = CompletableFuture.supplyAsync(() ->
                Said.by("replay", file.toString(), "--data", folders.data().toString(), "--screen", "window"));
        // Until it has gone through the batch; of one in which nothing went wrong the headline stands alone.
        until(() ->
                replay.isDone() || window.texts().stream().anyMatch(said -> said.contains("are told the same now")));
        if (replay.isDone()) throw new AssertionError(replay.get().toString());
        String verdict = headline(robot).orElseThrow();
        robot.interact(stage::requestFocus);
        robot.write("q");
        Said said = replay.get(60, TimeUnit.SECONDS);
        assertEquals(0, said.exit(), said::err);
        assertTrue(said.out().startsWith(verdict), () -> verdict + " is not the first of " + said.out());
        assertTrue(said.out().contains("the same"), said::out);
    }

    /** What the replay found: until it has gone through the batch, what the alarms told. */
    private static Optional<String> headline(FxRobot robot) {
        return read(() -> robot.lookup("#headline").tryQueryAs(Labeled.class).map(Labeled::getText))
                .filter(text -> !text.isBlank());
    }

    private Starting.Begin begin(Folders folders) {
        return new Starting.Begin() {
            private boolean begun;

            @Override
            public void watch(StartChoice choice) throws Refusal, InterruptedException {
                assertEquals(Way.OWN_HANDS, choice.way());
                var scenario = PracticeCommand.named("first-light");
                Recipe recipe = Chocolates.find(scenario.chocolate(), folders, new PrintWriter(err, true));
                TrainingProbe probe = new TrainingProbe(scenario, recipe, SPEED, AtCues.GO_ON);
                Setup setup = new Setup(
                        recipe,
                        probe.bowl().orElseThrow(),
                        probe.probes(),
                        Setup.USUAL_REACTION,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        probe.origin(),
                        Approach.ONE_LIFT,
                        OptionalDouble.empty(),
                        probe.beginning(),
                        probe.holding());
                LiveBatch.Plan plan = new LiveBatch.Plan(setup, probe, Optional.empty(), Optional.empty(), false);
                Screens screens =
                        new Screens(new PrintWriter(out, true), new PrintWriter(err, true), Theme.BRIGHT, Motion.STILL);
                begun = true;
                new LiveBatch(
                                plan,
                                new SessionFiles(folders.sessions()),
                                Units.CELSIUS,
                                new Choices(Settings.USUAL, fifthform.monitor.model.KeyMap.USUAL),
                                new PrintWriter(out, true),
                                new PrintWriter(err, true))
                        .watch(screens, Optional.of(ScreenChoice.WINDOW), List.of(recipe), LiveBatch.Around.NOTHING);
            }

            @Override
            public boolean hasBegun() {
                return begun;
            }
        };
    }
}
