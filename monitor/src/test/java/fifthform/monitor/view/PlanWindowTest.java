package fifthform.monitor.view;

import static fifthform.monitor.view.OnScreen.read;
import static fifthform.monitor.view.OnScreen.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.plan.PlanField;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.PlanText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A robot plans an evening by keys only; and pictures of it for people to look at, with no words cut off. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class PlanWindowTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @TempDir
    Path data;

    private PlanDesk desk;
    private PlanScreen screen;
    private Stage stage;

    @Start
    void open(Stage given) {
        stage = given;
        desk = new PlanDesk(
                Recipes.load(data.resolve("none")).known().stream()
                        .map(KnownRecipe::recipe)
                        .toList(),
                Stream.of(BowlMaterial.STEEL, BowlMaterial.GLASS)
                        .map(m -> new Bowl(m.word(), m, OptionalDouble.empty(), Optional.empty()))
                        .toList(),
                Units.CELSIUS,
                data.resolve("cards"),
                () -> LocalDate.of(2026, 2, 8));
        screen = PlanWindow.in(
                        stage,
                        desk,
                        Theme.BRIGHT,
                        d -> "monitor/run watch --bowl " + d.bowl().id())
                .screen();
    }

    private String focused() {
        return stage.getScene().getFocusOwner().getId();
    }

    private boolean says(String words) {
        return read(() -> screen.figures().getContent().lookupAll(".label").stream()
                .anyMatch(
                        node -> ((Label) node).getText().replace('\u00A0', ' ').contains(words)));
    }

    private String said() {
        return read(() -> ((Label) screen.lookup("#plan-said")).getText());
    }

    @Test
    void anEveningIsPlannedByKeysAndItsCardSaved(FxRobot robot) throws Exception {
        assertEquals("plan-amount", focused());
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write("650");
        until(() -> says("Plan for 650 g"));
        assertTrue(
                read(() -> ((Label) screen.lookup(".finding")).getText().contains("650\u00A0g")),
                "a figure may be parted from its unit");
        robot.type(KeyCode.TAB, KeyCode.TAB);
        assertEquals("plan-bowl", focused());
        robot.type(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
        until(() -> says("bowl of glass"));
        robot.type(KeyCode.TAB);
        assertEquals("plan-bowl-weight", focused());
        robot.write("420");
        robot.type(KeyCode.TAB, KeyCode.TAB);
        assertEquals("plan-pan", focused());
        robot.type(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
        until(() -> desk.plan().orElseThrow().request().panMaterial() == BowlMaterial.ALUMINIUM);
        robot.type(KeyCode.TAB, KeyCode.TAB);
        robot.write("14,5");
        assertEquals("14,5", desk.typed(PlanField.TAP));
        until(() -> desk.plan().orElseThrow().request().tapCelsius().equals(OptionalDouble.of(14.5)));
        assertTrue(says("thermometer was not checked"));
        robot.interact(() -> screen.lookup("#plan-checked").requestFocus());
        robot.type(KeyCode.SPACE);
        until(() -> !says("thermometer was not checked"));
        robot.type(KeyCode.ESCAPE);
        assertEquals("plan-figures", focused());
        robot.type(KeyCode.W);
        until(() -> says("C1 dT/dt"));
        assertTrue(screen.figures().getVvalue() > 0.2);
        robot.type(KeyCode.W);
        until(() -> !says("C1 dT/dt"));
        robot.type(KeyCode.S);
        Path card = data.resolve("cards/plan-2026-02-08-" + desk.recipe().id() + ".svg");
        until(() -> Files.exists(card));
        assertTrue(said().contains(card.toString()), said());
        robot.type(KeyCode.S);
        until(() ->
                Files.exists(card.resolveSibling(card.getFileName().toString().replace(".svg", "-2.svg"))));
        robot.type(KeyCode.G);
        until(() -> said().contains("monitor/run watch --bowl glass"));
        robot.type(KeyCode.F);
        assertEquals("plan-amount", focused());
    }

    @Test
    void whatCannotBeIsSaidBesideTheFormAndNoPlanIsShown(FxRobot robot) throws Exception {
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write("lots");
        until(() -> says("Chocolate, g: give 50 to 20000"));
        assertFalse(says("Plan for"));
        robot.type(KeyCode.ESCAPE, KeyCode.S);
        until(() -> said().startsWith("There is no plan yet"));
        robot.interact(() -> desk.type(PlanField.START, "soon"));
        robot.interact(screen::show);
        assertTrue(says("Start: give a time of day"));
    }

    @Test
    void picturesInBothThemesAndSizesAndNoWordIsCutOff(FxRobot robot) throws Exception {
        desk.check(true);
        Map<PlanField, String> evening = Map.of(
                PlanField.BOWL_WEIGHT, "350",
                PlanField.PAN_WEIGHT, "900",
                PlanField.TAP, "14",
                PlanField.ROOM, "21",
                PlanField.HUMIDITY, "50",
                PlanField.BAR, "80",
                PlanField.START, "18:30");
        evening.forEach(desk::type);
        for (Theme theme : Theme.values()) {
            for (int[] size : new int[][] {{1366, 768, 100}, {1920, 1080, 100}, {1366, 768, 200}, {1920, 1080, 200}}) {
                String name = "plan-" + theme.name().toLowerCase(Locale.ROOT) + "-" + size[0] + "x" + size[1] + "-"
                        + size[2] + ".png";
                Png.write(picture(robot, theme, size[0], size[1], size[2]), FOLDER.resolve(name));
            }
        }
        desk.toggleWhy();
        Png.write(picture(robot, Theme.DARK, 1366, 768, 100), FOLDER.resolve("plan-why.png"));
        robot.interact(screen::show);
        for (Node node : screen.lookupAll("*")) {
            if (!node.isFocusTraversable() || node.getId() == null) continue;
            String words = node instanceof Labeled label ? label.getText() : node.getAccessibleText();
            assertTrue(words != null && !words.isBlank(), node.toString());
        }
        assertEquals(PlanText.CAUTION.say(), ((Label) screen.lookup("#" + PlanText.CAUTION.key())).getText());
    }

    private WritableImage picture(FxRobot robot, Theme theme, int width, int height, int percent) {
        WritableImage[] image = new WritableImage[1];
        robot.interact(() -> {
            PlanScreen shown = new PlanScreen(desk, new Deaf());
            shown.wear(theme);
            Scene scene = new Scene(shown, width, height);
            shown.scale(percent);
            desk.say("");
            shown.show();
            for (int i = 0; i < 4; i++) {
                shown.applyCss();
                shown.layout();
            }
            if (desk.showsWhy()) shown.reachWhy();
            shown.layout();
            image[0] = scene.snapshot(null);
            assertEquals(List.of(), cutOff(shown));
            assertInSight(shown, height, percent);
        });
        return image[0];
    }

    /** What warns and what can be pressed stands in the window, however large the letters; and the plan is a key away. */
    private void assertInSight(PlanScreen shown, int height, int percent) {
        String at = percent + " % at " + height;
        List<String> ids = List.of(PlanText.CAUTION.key(), "plan-why", "plan-save", "plan-print", "plan-watch");
        for (String id : ids) assertTrue(bottom(shown.lookup("#" + id)) <= height, id + " is out of sight, " + at);
        double letters = 13 * percent / 100.0;
        for (Node field : shown.lookupAll(".text-field"))
            assertTrue(field.getLayoutBounds().getWidth() < 13 * letters, field + " is wide for a few digits, " + at);
        if (desk.showsWhy()) return;
        shown.reachPlan();
        shown.layout();
        assertTrue(bottom(shown.lookup(".finding")) < bottom(shown.figures()), "the plan is not reached, " + at);
        shown.figures().setVvalue(0);
    }

    private static double bottom(Node node) {
        return node.localToScene(node.getBoundsInLocal()).getMaxY();
    }

    /** Nobody presses anything in a picture. */
    static final class Deaf implements PlanScreen.Acts {
        @Override
        public void why() {}

        @Override
        public void save() {}

        @Override
        public void print() {}

        @Override
        public void watch() {}
    }

    private static List<String> cutOff(PlanScreen shown) {
        return shown.lookupAll(".label, .button, .check-box").stream()
                .filter(node -> node instanceof Labeled && node.isVisible())
                .map(node -> (Labeled) node)
                .filter(label -> label.getText() != null && !label.getText().isBlank())
                .filter(label -> label.lookupAll(".text").stream()
                        .anyMatch(part -> part instanceof Text text
                                && part.getParent() == label
                                && !text.getText()
                                        .strip()
                                        .equals(label.getText().strip())))
                .map(Labeled::getText)
                .toList();
    }
}
