package fifthform.monitor.view;

import static fifthform.monitor.view.OnScreen.read;
import static fifthform.monitor.view.OnScreen.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Key;
import fifthform.monitor.model.Moments;
import fifthform.monitor.model.ScreenFeed;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.settings.Motion;
import fifthform.monitor.settings.ScreenSizes;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A robot at the keys and the pointer of a real window. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class WatchWindowTest {
    private final List<Key> taken = new CopyOnWriteArrayList<>();
    private final AtomicReference<WatchPicture> picture = new AtomicReference<>(Moments.liftNow());
    private final AtomicLong published = new AtomicLong(System.nanoTime());
    private final AtomicBoolean alwaysFresh = new AtomicBoolean(true);
    private final AtomicBoolean finished = new AtomicBoolean();
    private final AtomicInteger closeRequests = new AtomicInteger();
    private Stage stage;

    @Start
    void open(Stage given) {
        stage = given;
        WatchWindow.in(stage, feed(), Theme.BRIGHT, Motion.BLINKING, WatchWindow.Windows.ONE);
        stage.requestFocus();
    }

    private ScreenFeed feed() {
        return new ScreenFeed(
                picture::get,
                () -> alwaysFresh.get() ? System.nanoTime() : published.get(),
                System::nanoTime,
                taken::add,
                closeRequests::incrementAndGet,
                finished::get,
                () -> true);
    }

    @Test
    void everyKeyReachesTheSession(FxRobot robot) {
        robot.type(KeyCode.SPACE, KeyCode.ENTER, KeyCode.B, KeyCode.M, KeyCode.N, KeyCode.U, KeyCode.P, KeyCode.C);
        robot.type(KeyCode.LEFT, KeyCode.END);
        robot.write("+-q");
        assertEquals(
                List.of(
                        Key.SEEN,
                        Key.STEP_DONE,
                        Key.BOWL_MOVED,
                        Key.MARK,
                        Key.NOTE,
                        Key.UNDO,
                        Key.PROBE_OUT,
                        Key.CHOCOLATE,
                        Key.EARLIER,
                        Key.NOW,
                        Key.FASTER,
                        Key.SLOWER,
                        Key.QUIT),
                taken);
    }

    @Test
    void aClickIsAKey(FxRobot robot) {
        robot.clickOn("#key-bowl_moved").clickOn("#key-quit");
        assertEquals(List.of(Key.BOWL_MOVED, Key.QUIT), taken);
    }

    @Test
    void afterAClickSpaceStillMeansSeen(FxRobot robot) {
        robot.clickOn("#key-mark").type(KeyCode.SPACE);
        assertEquals(List.of(Key.MARK, Key.SEEN), taken);
    }

    @Test
    void enterPressesTheButtonReachedWithTabOnly(FxRobot robot) {
        robot.type(KeyCode.TAB, KeyCode.TAB, KeyCode.TAB);
        Node focused = stage.getScene().getFocusOwner();
        robot.type(KeyCode.ENTER);
        assertEquals(
                List.of(focused.getId()),
                taken.stream()
                        .map(key -> "key-" + key.name().toLowerCase(java.util.Locale.ROOT))
                        .toList());
        assertEquals(List.of(Key.BOWL_MOVED), taken);
    }

    @Test
    void themeChangesAndHelpShows(FxRobot robot) throws Exception {
        WatchScreen screen = (WatchScreen) stage.getScene().getRoot();
        robot.type(KeyCode.T);
        assertEquals(Theme.DARK, screen.theme());
        robot.type(KeyCode.H);
        until(() -> shows(robot, "I have seen it, be quiet"));
        robot.type(KeyCode.H);
        until(() -> !shows(robot, "I have seen it, be quiet"));
    }

    @Test
    void aNewPictureIsPulled(FxRobot robot) throws Exception {
        assertTrue(shows(robot, "LIFT THE BOWL NOW"));
        picture.set(Moments.cooling());
        until(() -> shows(robot, "Cool it, keep stirring"));
    }

    @Test
    void aSilentSessionIsNotShownAsTrue(FxRobot robot) throws Exception {
        assertFalse(shows(robot, "Not updating"));
        published.set(System.nanoTime() - TimeUnit.SECONDS.toNanos(4));
        alwaysFresh.set(false);
        until(() -> shows(robot, "Not updating for"));
    }

    @Test
    void closingAsksTheSessionAndTheSessionEndsTheWindow(FxRobot robot) throws Exception {
        robot.interact(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
        assertEquals(1, closeRequests.get());
        assertTrue(stage.isShowing());
        finished.set(true);
        until(() -> !stage.isShowing());
    }

    @Test
    void theFarWindowShowsWhatMattersAndClosingItEndsNothing(FxRobot robot) throws Exception {
        robot.interact(() -> WatchWindow.in(
                new Stage(), feed(), Theme.BRIGHT, Motion.BLINKING, WatchWindow.Windows.withFar(ScreenSizes.USUAL)));
        Stage far = far(robot);
        assertTrue(farShows(far, "LIFT THE BOWL NOW"));
        picture.set(Moments.cooling());
        until(() -> farShows(far, "Cool it, keep stirring"));
        robot.interact(far::requestFocus);
        robot.type(KeyCode.SPACE);
        assertEquals(List.of(Key.SEEN), taken, "keys mean the same there");
        robot.interact(far::close);
        assertTrue(stage.isShowing());
        assertEquals(0, closeRequests.get());
        picture.set(Moments.liftNow());
        until(() -> shows(robot, "LIFT THE BOWL NOW"));
    }

    @AfterEach
    void closeAll(FxRobot robot) {
        finished.set(true);
        robot.interact(() -> List.copyOf(Window.getWindows()).forEach(Window::hide));
    }

    private Stage far(FxRobot robot) {
        return (Stage) Window.getWindows().stream()
                .filter(window -> window != stage)
                .filter(window -> window.getScene().getRoot() instanceof FarScreen)
                .findFirst()
                .orElseThrow();
    }

    private static boolean farShows(Stage far, String words) {
        return read(() -> far.getScene().getRoot().lookupAll(".words").stream()
                .anyMatch(node -> node instanceof Text text
                        && OnScreen.plain(text.getText()).contains(OnScreen.plain(words))));
    }

    private static boolean shows(FxRobot robot, String words) {
        return read(() -> robot.lookup(node -> node instanceof Text text
                        && text.isVisible()
                        && OnScreen.plain(text.getText()).contains(OnScreen.plain(words)))
                .tryQuery()
                .isPresent());
    }
}
