package fifthform.monitor.view;

import static fifthform.monitor.view.OnScreen.read;
import static fifthform.monitor.view.OnScreen.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.replay.Desks;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.replay.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.ScrollEvent;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A robot at the keys of the Replay window: the day after a batch that went wrong, without a pointer. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class ReplayWindowTest {
    /** JUnit's own folder is filled after the window starts; so this one is made here and emptied here. */
    private Path folder;

    private ReplayDesk desk;
    private ReplayWindow window;
    private Stage stage;

    @Start
    void open(Stage given) throws IOException {
        folder = Files.createTempDirectory("replay-window");
        Path session = Desks.tape("demo-own-way", folder);
        Path other = Desks.tape("demo-unplugged", folder);
        stage = given;
        desk = Desks.desk(session);
        desk.begin();
        window = ReplayWindow.in(stage, new ReplayFeed(desk, () -> List.of(other)), Theme.BRIGHT);
    }

    @AfterEach
    void clean() throws IOException {
        desk.close();
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) Files.delete(file);
        }
        Files.delete(folder);
    }

    @Test
    void aWholeReplayByKeysOnly(FxRobot robot) throws Exception {
        until(() -> text(robot, "#agreement").startsWith("All 45 things"));
        assertTrue(text(robot, "#headline").startsWith("Reached melt-out"), text(robot, "#headline"));

        // From event to event, there and back.
        robot.type(KeyCode.END, KeyCode.PAGE_UP, KeyCode.PAGE_UP, KeyCode.PAGE_DOWN);
        until(() -> text(robot, "#said").contains(" · "));
        String stepped = text(robot, "#said");
        robot.type(KeyCode.PAGE_UP);
        until(() -> !text(robot, "#said").equals(stepped));

        // The alarms have their lead; the third one is gone to.
        robot.write("3");
        robot.type(KeyCode.DOWN, KeyCode.DOWN, KeyCode.ENTER);
        until(() -> text(robot, "#clock").startsWith("30:39"));
        until(() -> shows(robot, "44 s before 32.0 °C was passed · stood 56 s"));
        robot.type(KeyCode.ESCAPE);
        assertTrue(focused() instanceof Slider, String.valueOf(focused()));

        // What was told there, and what is computed.
        until(() -> shows(robot, "LIFT THE BOWL NOW"));
        robot.write("a");
        robot.type(KeyCode.RIGHT, KeyCode.RIGHT);
        robot.press(KeyCode.SHIFT).type(KeyCode.RIGHT).release(KeyCode.SHIFT);
        robot.write("b");
        until(() -> text(robot, "#cursors").startsWith("A to B: 1 min 10 s, +"));

        // Closer, a note, and the part that is shown goes out as a table and a drawing.
        robot.type(KeyCode.UP, KeyCode.UP, KeyCode.UP);
        robot.write("n");
        until(() -> focused() instanceof TextField);
        robot.write("the phone rang");
        robot.type(KeyCode.ENTER);
        until(() -> text(robot, "#said").startsWith("note kept at 31:49"));
        robot.write("e");
        until(() -> text(robot, "#said").startsWith("written: "));
        robot.write("d");
        until(() -> text(robot, "#said").endsWith(".svg"));
        robot.write("p");
        until(() -> text(robot, "#said").contains(".pdf"));
        assertTrue(Files.size(written(".pdf")) > 10_000, "letters and curve are in the report");
        Path table = written(".csv");
        assertTrue(Files.readString(table).contains(",note,the phone rang\r\n"), "the note is in the table");
        String drawing = Files.readString(written(".svg"));
        assertTrue(drawing.contains(">the phone rang</text>") && drawing.contains("A to B: 1 min 10 s"));
        robot.write("0");
        until(() -> desk.span().length() > 2_000_000_000_000L);

        // The note is changed, and its change is kept.
        robot.write("4");
        until(() -> focused() instanceof ListView<?>);
        robot.type(KeyCode.F2);
        until(() -> focused() instanceof TextField);
        robot.write(" twice");
        robot.type(KeyCode.ENTER);
        until(() -> shows(robot, "the phone rang twice"));

        // Another batch beside it, matched at the lift.
        robot.write("l");
        until(() -> focused() instanceof ListView<?>);
        robot.type(KeyCode.ENTER);
        until(() -> text(robot, "#said").equals("demo-unplugged laid beside it, matched at the first trough"));
        robot.write("j");
        until(() -> shows(robot, "matched at the lift: 3"));
        robot.write("k");
        robot.type(KeyCode.ESCAPE);

        // Played from the start to the end as fast as it goes.
        robot.type(KeyCode.HOME);
        for (int i = 0; i < 5; i++) robot.write("+");
        until(() -> text(robot, "#pace").equals("as fast as possible"));
        robot.type(KeyCode.SPACE);
        until(() -> text(robot, "#clock").startsWith("47:34 of 47:34"));
        until(() -> text(robot, "#play").equals("Play"));

        robot.write("q");
        until(() -> !stage.isShowing());
    }

    @Test
    void themeAndSizeOfLettersByKeys(FxRobot robot) throws Exception {
        robot.write("t");
        until(() -> window.screen().theme() == Theme.DARK);
        robot.press(KeyCode.CONTROL).type(KeyCode.PLUS).type(KeyCode.PLUS).release(KeyCode.CONTROL);
        until(() -> window.screen().percent() == 150);
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT0).release(KeyCode.CONTROL);
        until(() -> window.screen().percent() == 100);
    }

    @Test
    void everyControlIsReachedByTabAndHasAName(FxRobot robot) throws Exception {
        List<String> reached = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            Node node = focused();
            if (reached.contains(node.getId())) break;
            reached.add(node.getId());
            assertFalse(name(node).isBlank(), node + " has no name for a screen reader");
            robot.type(KeyCode.TAB);
            WaitForAsyncUtils.waitForFxEvents();
        }
        for (String id :
                List.of("time", "play", "earlier", "later", "slower", "faster", "whole", "tab-why", "list-why"))
            assertTrue(reached.contains(id), id + " is not in " + reached);
    }

    private static String name(Node node) {
        if (node.getAccessibleText() != null) return node.getAccessibleText();
        return node instanceof Labeled labeled ? labeled.getText() : "";
    }

    @Test
    void spaceOnAButtonPressesItAndAfterAClickPlays(FxRobot robot) throws Exception {
        robot.clickOn("#later");
        until(() -> focused() instanceof Slider);
        robot.type(KeyCode.SPACE);
        until(() -> text(robot, "#play").equals("Pause"));
        robot.type(KeyCode.SPACE);
        until(() -> text(robot, "#play").equals("Play"));
    }

    @Test
    void theWheelZoomsWhereThePointerIs(FxRobot robot) throws Exception {
        Span before = desk.span();
        Node chart = robot.lookup("#chart").query();
        // The pretend screen has no wheel; the event is what a wheel turned away from the hand would send.
        robot.interact(() -> chart.fireEvent(new ScrollEvent(
                ScrollEvent.SCROLL,
                300,
                80,
                300,
                80,
                false,
                false,
                false,
                false,
                false,
                false,
                0,
                40,
                0,
                40,
                ScrollEvent.HorizontalTextScrollUnits.NONE,
                0,
                ScrollEvent.VerticalTextScrollUnits.NONE,
                0,
                0,
                null)));
        until(() -> desk.span().length() < before.length());
        assertTrue(desk.span().from() > 0, "about where the pointer is, not at the beginning");
    }

    @Test
    void nothingIsCutOffAtAnySizeOfLetters(FxRobot robot) throws Exception {
        until(() -> text(robot, "#agreement").startsWith("All 45 things"));
        robot.interact(() -> desk.seek(1_860_000_000_000L));
        for (int percent : new int[] {100, 150, 200, 300}) {
            robot.interact(() -> window.screen().scale(percent));
            WaitForAsyncUtils.sleep(400, TimeUnit.MILLISECONDS);
            WaitForAsyncUtils.waitForFxEvents();
            List<String> faults = new ArrayList<>();
            robot.interact(() -> faults(window.screen(), faults));
            assertEquals(List.of(), faults, "at " + percent + " %");
        }
    }

    /** Words that are shortened, or run out of the page at its side. */
    private void faults(Parent parent, List<String> faults) {
        for (Node node : parent.getChildrenUnmodifiable()) {
            if (!node.isVisible()) continue;
            if (node instanceof Text text && text.getText().endsWith("…")) faults.add("cut: " + text.getText());
            if (node instanceof Text text && !text.getText().isBlank()) {
                Bounds at = text.localToScene(text.getBoundsInLocal());
                if (at.getMinX() < -1 || at.getMaxX() > stage.getScene().getWidth() + 1)
                    faults.add("out at the side: " + text.getText() + " " + at);
            }
            if (node instanceof Parent inner) faults(inner, faults);
        }
    }

    private Path written(String ending) throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private Node focused() {
        return stage.getScene().getFocusOwner();
    }

    private static String text(FxRobot robot, String id) {
        return read(() -> robot.lookup(id).queryAs(Labeled.class).getText());
    }

    private static boolean shows(FxRobot robot, String words) {
        return read(() -> robot.lookup(node -> node instanceof Labeled label
                        && label.isVisible()
                        && label.getText() != null
                        && label.getText().contains(words))
                .tryQuery()
                .isPresent());
    }
}
