package fifthform.monitor.view;

import static fifthform.monitor.view.OnScreen.read;
import static fifthform.monitor.view.OnScreen.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Key;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.Moments;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Settings;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.settings.Volume;
import fifthform.monitor.setup.SetupDesk;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A robot sets everything by keys only. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class SetupWindowTest {
    private static final Instant NOW = Instant.parse("2026-02-03T18:00:00Z");

    private final List<Volume> played = new CopyOnWriteArrayList<>();

    @TempDir
    Path home;

    private Folders folders;
    private Stage stage;
    private SetupScreen screen;
    private final CountDownLatch stopped = new CountDownLatch(1);

    @Start
    void open(Stage given) {
        stage = given;
        folders = Folders.of("Linux", Map.of(), home);
        screen = shown(given);
    }

    private SetupScreen shown(Stage on) {
        return SetupWindow.in(on, new SetupDesk(folders, () -> NOW), volume -> {
                    played.add(volume);
                    return untilStopped();
                })
                .screen();
    }

    /** As the sound does until somebody is back from the stove. */
    private Optional<String> untilStopped() {
        try {
            Thread.sleep(60_000);
        } catch (InterruptedException end) {
            stopped.countDown();
            return Optional.empty();
        }
        return Optional.of("nobody stopped it");
    }

    private Settings kept() {
        return new SettingsFile(folders.settingsFile()).load().settings();
    }

    private String words(String id) {
        return read(() -> ((Labeled) screen.lookup("#" + id)).getText());
    }

    /** Tab from the list until the control of this id has the focus. */
    private void go(FxRobot robot, KeyCode section, String id) throws Exception {
        robot.type(KeyCode.ESCAPE, section);
        for (int i = 0; i < 120 && !id.equals(focused()); i++) robot.type(KeyCode.TAB);
        assertEquals(id, focused());
    }

    private String focused() {
        Node owner = stage.getScene().getFocusOwner();
        return owner == null ? "" : String.valueOf(owner.getId());
    }

    /** Else it would sound over the next batch, with no key that stops it. */
    @Test
    void theTrialOfTheSoundEndsWithItsWindow(FxRobot robot) throws Exception {
        go(robot, KeyCode.DIGIT3, "sound-play");
        robot.type(KeyCode.ENTER);
        until(() -> words("sound-play").equals("Stop the sound"));
        robot.type(KeyCode.Q);
        assertTrue(stopped.await(30, TimeUnit.SECONDS));
        assertFalse(stage.isShowing());
    }

    @Test
    void everythingIsSetByKeysAndIsThereWhenTheWindowOpensAgain(FxRobot robot) throws Exception {
        go(robot, KeyCode.DIGIT1, "set-theme");
        robot.type(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
        until(() -> kept().theme() == Settings.Theme.DARK);
        go(robot, KeyCode.DIGIT1, "set-units");
        robot.type(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
        until(() -> kept().units() == Units.FAHRENHEIT);
        go(robot, KeyCode.DIGIT1, "card-width");
        for (int i = 0; i < 5; i++) robot.type(KeyCode.RIGHT);
        until(() -> kept().sizes().scales().size() == 1);
        go(robot, KeyCode.DIGIT1, "set-distance");
        robot.eraseText(1).write("1.5").type(KeyCode.ENTER);
        until(() -> kept().sizes().metres() == 1.5);
        go(robot, KeyCode.DIGIT2, "set-key-bowl-moved");
        robot.type(KeyCode.ENTER, KeyCode.PAGE_DOWN);
        until(() -> "page-down".equals(kept().keys().get("bowl-moved")));
        go(robot, KeyCode.DIGIT2, "set-key-mark");
        robot.type(KeyCode.SPACE, KeyCode.Z);
        until(() -> "z".equals(kept().keys().get("mark")));
        go(robot, KeyCode.DIGIT3, "set-volume");
        robot.type(KeyCode.SPACE, KeyCode.UP, KeyCode.ENTER);
        until(() -> kept().volume() == Volume.MEDIUM);
        go(robot, KeyCode.DIGIT3, "sound-play");
        robot.type(KeyCode.ENTER);
        until(() -> played.equals(List.of(Volume.MEDIUM)) && words("sound-play").equals("Stop the sound"));
        assertTrue(words("said").contains("go to the stove"), words("said"));
        robot.type(KeyCode.ENTER);
        until(() -> words("said").equals("Stopped."));
        assertEquals("Play the urgent sound", words("sound-play"));
        assertEquals("sound-play", focused());
        go(robot, KeyCode.DIGIT3, "sound-no");
        robot.type(KeyCode.ENTER);
        until(() -> kept().hearing().isPresent());
        assertTrue(words("sound-answer").startsWith("Not heard on 2026-02-03"), words("sound-answer"));
        go(robot, KeyCode.DIGIT7, "set-sessions");
        assertEquals("", read(() -> ((TextField) screen.lookup("#set-sessions")).getText()), "the usual is not none");
        robot.write(home.resolve("batches").toString()).type(KeyCode.ENTER);
        until(() -> kept().sessions().isPresent());

        Settings before = kept();
        Platform.runLater(() -> {
            stage.hide();
            stage = new Stage();
            screen = shown(stage);
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(before, kept());
        robot.type(KeyCode.DIGIT2);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals("Page Down", words("set-key-bowl-moved"));
        watchWears(robot, before);
    }

    /** Watch takes the keys as they were set, and its row shows them. */
    private void watchWears(FxRobot robot, Settings settings) throws Exception {
        List<Key> taken = new CopyOnWriteArrayList<>();
        ScreenFeed feed = new ScreenFeed(
                Moments::liftNow,
                System::nanoTime,
                System::nanoTime,
                ScreenFeed.CharTaker.NOBODY,
                KeyMap.read(settings.keys()).keys(),
                taken::add,
                () -> {},
                () -> false,
                () -> true);
        Platform.runLater(() -> {
            stage.hide();
            stage = new Stage();
            WatchWindow.in(stage, feed, Theme.DARK, settings.motion(), WatchWindow.Windows.ONE);
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.type(KeyCode.PAGE_DOWN, KeyCode.Z, KeyCode.B, KeyCode.M);
        until(() -> taken.equals(List.of(Key.BOWL_MOVED, Key.MARK)));
        Node bowl = stage.getScene().lookup("#key-bowl_moved");
        assertEquals("bowl moved, key Page Down", bowl.getAccessibleText());
        Platform.runLater(stage::hide);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void aKeyThatIsTakenIsToldAndUndoBringsBackWhatWas(FxRobot robot) throws Exception {
        go(robot, KeyCode.DIGIT2, "set-key-undo");
        robot.type(KeyCode.ENTER, KeyCode.M);
        until(() -> words("said").contains("M already means “mark”"));
        assertEquals(Map.of(), kept().keys());
        robot.type(KeyCode.ENTER, KeyCode.ESCAPE);
        assertEquals("U", words("set-key-undo"));
        robot.type(KeyCode.ENTER, KeyCode.F6);
        until(() -> words("set-key-undo").equals("F6"));
        robot.type(KeyCode.U);
        until(() -> words("set-key-undo").equals("U"));
        robot.type(KeyCode.T);
        until(() -> kept().theme() == Settings.Theme.DARK);
        robot.type(KeyCode.Q);
        until(() -> !stage.isShowing());
    }

    @Test
    void aChocolateIsCopiedChangedAndKept(FxRobot robot) throws Exception {
        go(robot, KeyCode.DIGIT4, "chocolate-copy");
        robot.type(KeyCode.ENTER);
        until(() -> "chocolate-text".equals(focused()));
        assertEquals("All of it makes sense.", words("chocolate-wrong"));
        robot.write("x");
        until(() -> !words("chocolate-wrong").equals("All of it makes sense."));
        robot.eraseText(1);
        until(() -> words("chocolate-wrong").equals("All of it makes sense."));
        robot.press(KeyCode.CONTROL).type(KeyCode.TAB).release(KeyCode.CONTROL);
        until(() -> "chocolate-keep".equals(focused()));
        robot.type(KeyCode.ENTER);
        until(() -> words("said").contains("is kept"));
        assertTrue(Files.exists(folders.recipes().resolve("my-dark.recipe")));
    }

    @Test
    void targetsAreWorkedOutFromAllThatIsInIt(FxRobot robot) throws Exception {
        go(robot, KeyCode.DIGIT4, "composition-other-fat");
        robot.eraseText(1).write("12");
        go(robot, KeyCode.DIGIT4, "composition-work-out");
        robot.type(KeyCode.ENTER);
        until(() -> "chocolate-text".equals(focused()));
        String worked = ((TextArea) screen.lookup("#chocolate-text")).getText();
        assertTrue(worked.contains("other soft fat"), worked);
        assertTrue(worked.contains("work low = 28.7 C"), worked);
    }
}
