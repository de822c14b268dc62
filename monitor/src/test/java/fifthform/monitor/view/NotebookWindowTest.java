package fifthform.monitor.view;

import static fifthform.monitor.view.OnScreen.read;
import static fifthform.monitor.view.OnScreen.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.looks.LookFile;
import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.Finding;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.RowFilter;
import fifthform.monitor.settings.Units;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A robot goes through the notebook by keys only. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class NotebookWindowTest {
    private static final String FOUND_OF = "2026-02-08-180000-dark";

    private final List<Path> replayed = new CopyOnWriteArrayList<>();
    private final List<String> finders = new CopyOnWriteArrayList<>();

    @TempDir
    Path data;

    private DemoBatches demo;
    private NotebookDesk desk;
    private NotebookScreen screen;
    private Stage stage;

    @Start
    void open(Stage given) throws Exception {
        stage = given;
        demo = NotebookDemo.record(data);
        desk = new NotebookDesk(demo.notebook(), demo.bin(), Units.CELSIUS, () -> NotebookDemo.NOW);
        desk.findBy(kind -> {
            finders.add(Thread.currentThread().getName());
            return List.of(new Finding(kind, Set.of(FOUND_OF), List.of("Found in the demo.")));
        });
        screen = NotebookWindow.in(stage, desk, Theme.BRIGHT, Optional.of(replayed::add))
                .screen();
    }

    private void allRead() throws Exception {
        until(() -> desk.unread() == 0 && rows().size() == 16);
    }

    private List<BatchRow> rows() {
        return read(() -> List.copyOf(screen.table().node().getItems()));
    }

    private BatchRow chosen() {
        return screen.table().chosen().orElseThrow();
    }

    private String words(String id) {
        return read(() -> ((Labeled) screen.lookup("#" + id)).getText());
    }

    @Test
    void whatAllLookedAtBatchesSayIsReadBehindTheScreenAndStandsBesideTheirRows(FxRobot robot) throws Exception {
        allRead();
        until(() -> words("together").contains("Found in the demo."));
        assertEquals(List.of("notebook"), finders, "asked once, and not by the thread that draws");
        robot.type(KeyCode.F).write("milk");
        until(() -> !words("together").contains("Found in the demo."));
    }

    @Test
    void whatIsAskedForIsTypedAndEscapeShowsAllAgain(FxRobot robot) throws Exception {
        allRead();
        robot.type(KeyCode.F);
        robot.write("streaks glass");
        until(() -> rows().size() == 5);
        assertTrue(words("count").startsWith("Batches: 5 of 18"), words("count"));
        robot.type(KeyCode.DOWN);
        assertTrue(stage.getScene().getFocusOwner() instanceof TableView<?>);
        robot.type(KeyCode.ESCAPE);
        until(() -> rows().size() == 16);
    }

    @Test
    void aChoiceBoxIsReachedByTabAndSetByArrows(FxRobot robot) throws Exception {
        allRead();
        robot.type(KeyCode.F, KeyCode.TAB, KeyCode.TAB);
        assertEquals("filter-bowl", stage.getScene().getFocusOwner().getId());
        robot.type(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
        until(() -> desk.filter().bowl().isPresent());
        assertEquals(Optional.of("demo glass"), desk.filter().bowl());
        // What cannot be read has no bowl, and stays out of a bowl's list.
        assertEquals(6, rows().size());
    }

    @Test
    void whyAndThePageAreAKeyEach(FxRobot robot) throws Exception {
        allRead();
        BatchRow row = chosen();
        robot.type(KeyCode.W);
        until(() -> whySaid().size() > 1
                || !whySaid().isEmpty() && !whySaid().get(0).contains("once more"));
        assertEquals(NotebookScreen.Side.WHY, screen.side());
        assertEquals("Why the bars of " + row.name() + " came out so", words("why-title"));
        assertEquals(desk.why(row).stream().map(String::strip).toList(), whySaid());
        assertTrue(
                whySaid().contains("Look at the bars first: L here."), whySaid().toString());
        assertFalse(whySaid().get(0).contains("Begin with"), "a command is told where there is a key");
        picture(robot, "notebook-robot-why.png");
        assertEquals("why-title", stage.getScene().getFocusOwner().getId());
        robot.type(KeyCode.ESCAPE);
        assertEquals(NotebookScreen.Side.BATCH, screen.side());

        robot.type(KeyCode.P);
        until(() -> words("said").startsWith("Written: "));
        assertTrue(words("said").endsWith(row.name() + ".pdf · open it to print it"), words("said"));
        assertTrue(Files.size(row.file().resolveSibling(row.name() + ".pdf")) > 10_000);
    }

    private List<String> whySaid() {
        return read(() -> screen.lookup("#why-lines") == null ? List.of() : labels("#why-lines"));
    }

    private List<String> labels(String within) {
        return read(() -> screen.lookup(within).lookupAll(".label").stream()
                .map(node -> ((Labeled) node).getText())
                .toList());
    }

    @Test
    void threeAreComparedByKeysSideBySide(FxRobot robot) throws Exception {
        allRead();
        robot.type(KeyCode.SPACE, KeyCode.DOWN, KeyCode.SPACE);
        for (int i = 0; i < 3; i++) robot.type(KeyCode.DOWN);
        robot.type(KeyCode.SPACE);
        until(() -> desk.comparison().batches().size() == 3);
        assertEquals(NotebookScreen.Side.COMPARED, screen.side());
        List<String> shown = labels("#compared");
        assertTrue(shown.contains("Peak after the cool"), shown.toString());
        assertTrue(shown.contains("A  2026-02-08 18:00"), shown.toString());
        assertTrue(shown.contains("cooled too short; crystals too few"), shown.toString());
        robot.type(KeyCode.DOWN, KeyCode.SPACE);
        until(() -> words("said").startsWith("Three are compared already"));
        picture(robot, "notebook-robot-compared.png");
        robot.type(KeyCode.C);
        assertEquals(NotebookScreen.Side.BATCH, screen.side());
        // The finer curve has come by now.
        until(() -> !desk.wantsLarge(chosen()));
    }

    private void picture(FxRobot robot, String name) throws Exception {
        WritableImage[] image = new WritableImage[1];
        robot.interact(() -> image[0] = stage.getScene().snapshot(null));
        Png.write(image[0], Path.of(System.getProperty("picture.folder", "target/pictures"), name));
    }

    @Test
    void digitsSort(FxRobot robot) throws Exception {
        allRead();
        robot.type(KeyCode.DIGIT6);
        until(() -> rows().get(15).figures().peakCelsius().orElse(0) > 34.5);
        robot.type(KeyCode.DIGIT6);
        until(() -> rows().get(0).figures().peakCelsius().orElse(0) > 34.5);
    }

    @Test
    void enterOpensTheReplayOfTheBatchThatIsChosen(FxRobot robot) throws Exception {
        allRead();
        robot.type(KeyCode.DOWN, KeyCode.ENTER);
        assertEquals(List.of(chosen().file()), replayed);
    }

    @Test
    void whatIsPutAwayComesBackByOneKey(FxRobot robot) throws Exception {
        allRead();
        Path file = chosen().file();
        robot.type(KeyCode.DELETE);
        until(() -> rows().size() == 15);
        assertFalse(Files.exists(file));
        assertTrue(words("said").endsWith("U brings it back."), words("said"));
        robot.type(KeyCode.U);
        until(() -> Files.exists(file) && desk.unread() == 0 && rows().size() == 16);
    }

    @Test
    void theBinIsEmptiedAfterOneQuestionThatEnterDoesNotAnswer(FxRobot robot) throws Exception {
        allRead();
        robot.type(KeyCode.DELETE, KeyCode.DELETE, KeyCode.B, KeyCode.TAB, KeyCode.TAB);
        assertEquals("empty-bin", stage.getScene().getFocusOwner().getId());
        robot.type(KeyCode.SPACE);
        assertTrue(words("question").startsWith("Delete what is in the bin (2)"), words("question"));
        robot.type(KeyCode.SPACE);
        assertEquals(2, desk.binned().size());
        robot.type(KeyCode.TAB, KeyCode.TAB, KeyCode.SPACE);
        until(() -> words("question").startsWith("Delete what") && shown("empty-yes"));
        robot.type(KeyCode.SHIFT).press(KeyCode.SHIFT).type(KeyCode.TAB).release(KeyCode.SHIFT);
        assertEquals("empty-yes", stage.getScene().getFocusOwner().getId());
        robot.type(KeyCode.SPACE);
        until(() -> desk.binned().isEmpty());
        assertEquals("Batches deleted for good: 2.", words("said"));
    }

    private boolean shown(String id) {
        return read(() -> screen.lookup("#" + id).isVisible());
    }

    @Test
    void aLookIsMadeByKeys(FxRobot robot) throws Exception {
        allRead();
        BatchRow row = chosen();
        robot.type(KeyCode.L);
        assertEquals("bloom-none", stage.getScene().getFocusOwner().getId());
        robot.type(KeyCode.TAB, KeyCode.TAB, KeyCode.SPACE);
        robot.interact(() -> screen.lookup("#look-keep").requestFocus());
        robot.type(KeyCode.SPACE);
        until(() -> desk.row(row.name()).orElseThrow().looks().size() == 1);
        assertTrue(Files.readString(LookFile.place(row.file())).contains("\"bloom\":[\"streaks\"]"));
        assertTrue(words("said").contains("It counts as marks of lost temper."), words("said"));
        assertEquals(NotebookScreen.Side.BATCH, screen.side());
    }

    @Test
    void coloursAndSizeChangeByKeysAndEveryControlHasAName(FxRobot robot) throws Exception {
        allRead();
        robot.type(KeyCode.T);
        assertEquals(Theme.DARK, screen.theme());
        picture(robot, "notebook-robot-dark.png");
        robot.press(KeyCode.CONTROL).type(KeyCode.MINUS).release(KeyCode.CONTROL);
        assertEquals(100, screen.percent());
        robot.press(KeyCode.CONTROL).type(KeyCode.EQUALS, KeyCode.EQUALS).release(KeyCode.CONTROL);
        assertEquals(150, screen.percent());
        robot.interact(() -> named(screen));
        robot.type(KeyCode.L);
        robot.interact(() -> named(screen));
    }

    /** Whoever can have the focus says what it is. */
    private static void named(Parent parent) {
        for (Node node : parent.lookupAll("*")) {
            if (!node.isFocusTraversable() || !node.isVisible() || node.getId() == null) continue;
            String words = node instanceof Labeled label ? label.getText() : node.getAccessibleText();
            assertTrue(words != null && !words.isBlank(), node.toString());
        }
    }

    @Test
    void aBatchOfAnotherProgramStandsThereWhenTheFolderIsListedAnew(FxRobot robot) throws Exception {
        allRead();
        demo.record(DemoBatches.Plan.dark(32));
        robot.type(KeyCode.F5);
        until(() -> rows().size() == 17 && desk.unread() == 0);
        assertEquals(RowFilter.USUAL, desk.filter());
    }
}
