package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.notebook.BatchRow;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.Notebook;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.notebook.RowFilter;
import fifthform.monitor.notebook.RowFilter.Kinds;
import fifthform.monitor.settings.Units;
import fifthform.monitor.view.NotebookScreen.Side;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableCell;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** Pictures of the Notebook for people to look at; and that no words on it are cut off. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class NotebookPicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @TempDir
    static Path data;

    private static DemoBatches demo;

    @BeforeAll
    static void record() throws Exception {
        demo = NotebookDemo.record(data);
    }

    static Stream<Arguments> pictures() {
        return Stream.of(Theme.values())
                .flatMap(theme -> Stream.of(Side.values())
                        .flatMap(side -> Stream.of(
                                Arguments.of(theme, side, 1366, 768, 100),
                                Arguments.of(theme, side, 1920, 1080, 100),
                                Arguments.of(theme, side, 1366, 768, 200),
                                Arguments.of(theme, side, 1920, 1080, 200))));
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3} {4} %")
    @MethodSource("pictures")
    void aPictureOfEachSide(Theme theme, Side side, int width, int height, int percent) throws Exception {
        NotebookDesk desk = NotebookDemo.desk(demo, side == Side.COMPARED ? Units.FAHRENHEIT : Units.CELSIUS);
        String name = String.join(
                        "-",
                        "notebook",
                        side.name().toLowerCase(Locale.ROOT),
                        theme.name().toLowerCase(Locale.ROOT),
                        width + "x" + height,
                        Integer.toString(percent))
                + ".png";
        List<String> cut = new ArrayList<>();
        WritableImage image = onScreen(desk, theme, width, height, percent, screen -> {
            if (side == Side.COMPARED) {
                List<BatchRow> shown = desk.shown();
                for (int place : new int[] {0, 7, 9}) {
                    desk.compare(shown.get(place));
                    desk.takeLarge(shown.get(place), Notebook.curve(shown.get(place)));
                }
            }
            if (side == Side.WHY) {
                BatchRow asked = screen.table().chosen().orElseThrow();
                screen.why().begin(asked);
                screen.why().tell(desk.why(asked));
            }
            screen.open(side);
            cut.addAll(cutOff(screen));
            if (side != Side.BATCH) cut.addAll(outOfSight(screen, height));
            cut.addAll(columnsOutOfSight(screen));
        });
        Png.write(image, FOLDER.resolve(name));
        assertEquals(width, image.getWidth(), 1);
        assertEquals(height, image.getHeight(), 1);
        assertEquals(List.of(), cut);
    }

    @Test
    void anEmptyNotebookSaysWhatToDo(@TempDir Path nothing) throws Exception {
        NotebookDesk desk = NotebookDemo.desk(new DemoBatches(nothing), Units.CELSIUS);
        List<String> words = new ArrayList<>();
        WritableImage image = onScreen(desk, Theme.BRIGHT, 1366, 768, 100, screen -> {
            for (Node node : screen.lookupAll(".label"))
                if (node instanceof Labeled label && node.isVisible()) words.add(label.getText());
        });
        Png.write(image, FOLDER.resolve("notebook-empty-bright-1366x768-100.png"));
        assertTrue(words.contains("No batch is recorded yet."), words.toString());
    }

    @Test
    void practiceIsShownWhereItIsAskedFor() throws Exception {
        NotebookDesk desk = NotebookDemo.desk(demo, Units.CELSIUS);
        desk.ask(RowFilter.USUAL.withKinds(Kinds.BOTH));
        WritableImage image = onScreen(desk, Theme.DARK, 1366, 768, 100, screen -> {});
        Png.write(image, FOLDER.resolve("notebook-both-dark-1366x768-100.png"));
        assertEquals(18, desk.shown().size());
    }

    @Test
    void theCurveOfTheChosenRowStandsOnTheGroundOfItsRow() throws Exception {
        for (Theme theme : Theme.values()) {
            Color[] seen = new Color[2];
            Bounds[] at = new Bounds[1];
            NotebookDesk desk = NotebookDemo.desk(demo, Units.CELSIUS);
            WritableImage image = onScreen(desk, theme, 1366, 768, 100, screen -> {
                for (Node node : screen.lookupAll(".curve-cell"))
                    if (node instanceof TableCell<?, ?> cell
                            && cell.getGraphic() != null
                            && cell.getTableRow().isSelected())
                        at[0] = cell.getGraphic().localToScene(cell.getGraphic().getLayoutBounds());
            });
            int x = (int) at[0].getMinX();
            int y = (int) at[0].getMaxY() - 2;
            seen[0] = image.getPixelReader().getColor(x - 3, y);
            seen[1] = image.getPixelReader().getColor(x + 3, y);
            assertEquals(seen[0], seen[1], theme.name());
        }
    }

    /** The column is as wide as the widest word of its names, and one line is enough for that. */
    @Test
    void aBowlsNameIsNotBrokenInsideAWord(@TempDir Path other) throws Exception {
        DemoBatches one = new DemoBatches(other);
        one.record(DemoBatches.Plan.dark(32).in("polycarbonate"));
        List<Double> lines = new ArrayList<>();
        onScreen(NotebookDemo.desk(one, Units.CELSIUS), Theme.BRIGHT, 1280, 768, 100, screen -> {
            for (Node node : screen.lookupAll(".table-cell"))
                if (node instanceof TableCell<?, ?> cell && "polycarbonate".equals(cell.getText()))
                    lines.add(cell.lookup(".text").getLayoutBounds().getHeight() / 13);
        });
        assertEquals(1, lines.size());
        assertTrue(lines.get(0) < 2, "broken over " + lines + " letters' heights");
    }

    private interface Use {
        void with(NotebookScreen screen);
    }

    private static WritableImage onScreen(NotebookDesk desk, Theme theme, int width, int height, int percent, Use use)
            throws Exception {
        CompletableFuture<WritableImage> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                NotebookScreen screen = new NotebookScreen(desk, new Deaf(), false);
                screen.wear(theme);
                Scene scene = new Scene(screen, width, height);
                screen.scale(percent);
                desk.say("");
                screen.show();
                settle(screen);
                screen.focusRows();
                use.with(screen);
                settle(screen);
                answer.complete(scene.snapshot(null));
            } catch (Throwable failed) {
                answer.completeExceptionally(failed);
            }
        });
        return answer.get(60, TimeUnit.SECONDS);
    }

    private static void settle(Parent screen) {
        for (int i = 0; i < 3; i++) {
            screen.applyCss();
            screen.layout();
        }
    }

    /** Labels, buttons and heads whose words do not all stand there; the cells of the rows scroll, and wrap. */
    private static List<String> cutOff(NotebookScreen screen) {
        settle(screen);
        List<String> cut = new ArrayList<>();
        for (Node node : screen.lookupAll(".label, .button, .check-box")) {
            if (!(node instanceof Labeled label) || !shows(node) || label.getText() == null) continue;
            for (Node part : label.lookupAll(".text"))
                if (part instanceof Text text
                        && part.getParent() == label
                        && !text.getText().equals(label.getText().strip())
                        && !text.getText().equals(label.getText())) cut.add(label.getText() + " → " + text.getText());
            Bounds inside = label.localToScene(label.getBoundsInLocal());
            if (inside.getMaxX() > right(label, screen) + 1) cut.add(label.getText() + " is beyond the edge");
        }
        return cut;
    }

    /** What was opened shows its heading, wherever it stands. */
    private static List<String> outOfSight(NotebookScreen screen, int height) {
        Labeled heading = (Labeled) screen.lookup(".side .heading");
        Bounds at = heading.localToScene(heading.getBoundsInLocal());
        boolean inside = at.getMinY() >= 0 && at.getMaxY() <= height;
        return inside ? List.of() : List.of(heading.getText() + " is out of sight at " + at);
    }

    /** All heads of the rows stand whole in the table. */
    private static List<String> columnsOutOfSight(NotebookScreen screen) {
        Node table = screen.table().node();
        double right = table.localToScene(table.getBoundsInLocal()).getMaxX();
        return screen.table().node().lookupAll(".column-header").stream()
                .filter(node -> node.localToScene(node.getBoundsInLocal()).getMaxX() > right)
                .map(node -> "a column ends at "
                        + node.localToScene(node.getBoundsInLocal()).getMaxX() + ", the rows at " + right)
                .toList();
    }

    /** Where what can be seen of this node ends: at the table's head anywhere, since that scrolls. */
    private static double right(Node node, NotebookScreen screen) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (each.getStyleClass().contains("column-header-background")) return Double.POSITIVE_INFINITY;
            if (each instanceof ScrollPane pane)
                return pane.localToScene(pane.getBoundsInLocal()).getMaxX();
        }
        return screen.getScene().getWidth();
    }

    private static boolean shows(Node node) {
        for (Node each = node; each != null; each = each.getParent()) if (!each.isVisible()) return false;
        return true;
    }

    /** Nobody presses anything in a picture. */
    static final class Deaf implements NotebookScreen.Acts {
        @Override
        public void replay() {}

        @Override
        public void compare() {}

        @Override
        public void look() {}

        @Override
        public void why() {}

        @Override
        public void page() {}

        @Override
        public void putAway() {}

        @Override
        public void bin() {}

        @Override
        public void filtered() {}
    }
}
