package fifthform.monitor.view;

import static fifthform.monitor.view.OnScreen.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.plan.PlanDesk;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.settings.ScreenScale;
import fifthform.monitor.settings.Units;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.start.SeenProbe;
import fifthform.monitor.start.StartChoice;
import fifthform.monitor.start.StartChoice.Way;
import fifthform.monitor.start.StartDesk;
import fifthform.monitor.start.StartStep;
import fifthform.monitor.start.StartStock;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The start page by keys and by pointer; its pictures; and that a sticky finger can meet what it aims at. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class StartWindowTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));
    private static final LastStart LAST = new LastStart(
            Optional.of("/dev/ttyDemo0"), Optional.of("milk"), Optional.of("demo glass"), OptionalDouble.of(600));
    private static final List<SeenProbe> PROBES = List.of(
            new SeenProbe(
                    "/dev/ttyDemo0",
                    "demo adapter with one channel · used before",
                    "Last check 12 days ago: within ±0.3 °C.",
                    true),
            new SeenProbe(
                    "/dev/ttyDemo1",
                    "demo board · not used before",
                    "Never checked: may be off by two degrees. In ice water it takes ten minutes: monitor/run check-probe",
                    false));

    @TempDir
    Path home;

    private final List<StartChoice> chosen = new CopyOnWriteArrayList<>();
    private final List<SeenProbe> plugged = new CopyOnWriteArrayList<>(PROBES);
    private StartDesk desk;
    private StartWindow window;

    @Start
    void open(Stage stage) {
        desk = desk(LAST);
        Folders folders = Folders.of("Linux", Map.of(), home);
        window = StartWindow.in(
                stage,
                desk,
                Theme.BRIGHT,
                KeyMap.USUAL,
                new StartWindow.Around(
                        () -> List.copyOf(plugged),
                        StartWindowTest::plan,
                        plan -> "monitor/run watch",
                        () -> new SetupDesk(folders, Instant::now),
                        volume -> Optional.empty()),
                chosen::add);
        stage.requestFocus();
    }

    private static StartStock stock(LastStart last) {
        return new StartStock(
                Recipes.load(Path.of("no-recipes-here")).known().stream()
                        .map(KnownRecipe::recipe)
                        .toList(),
                List.of(
                        KeptBowl.named("demo steel", BowlMaterial.STEEL),
                        KeptBowl.named("demo glass", BowlMaterial.GLASS)),
                last,
                Optional.of("the batch of 14:02, cut off"),
                Units.CELSIUS);
    }

    private static StartDesk desk(LastStart last) {
        return new StartDesk(stock(last));
    }

    private static PlanDesk plan() {
        return new PlanDesk(
                stock(LAST).recipes(),
                List.of(KeptBowl.named("demo steel", BowlMaterial.STEEL).with(OptionalDouble.empty())),
                Units.CELSIUS,
                Path.of("no-cards-here"),
                () -> LocalDate.of(2026, 2, 3));
    }

    @Test
    void threeStepsByKeys(FxRobot robot) throws Exception {
        until(() -> desk.probes().isPresent());
        robot.type(KeyCode.DIGIT1, KeyCode.DOWN, KeyCode.UP, KeyCode.ENTER);
        assertEquals(StartStep.BOWL, desk.step());
        robot.type(KeyCode.DIGIT1, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.LEFT, KeyCode.ENTER);
        assertEquals(StartStep.GO, desk.step());
        robot.type(KeyCode.ESCAPE, KeyCode.ENTER, KeyCode.SPACE, KeyCode.UP, KeyCode.ENTER);
        assertEquals(
                List.of(new StartChoice(
                        Way.PROBE,
                        stock(LAST).recipes().get(0).id(),
                        Optional.of("demo steel"),
                        OptionalDouble.of(650),
                        Optional.of("/dev/ttyDemo0"))),
                chosen);
        robot.type(KeyCode.ENTER, KeyCode.X);
        assertEquals(1, chosen.size(), "while the probe is opened no key means anything");
    }

    @Test
    void asLastTimeIsOneKey(FxRobot robot) {
        robot.type(KeyCode.L);
        assertEquals(List.of(Way.AS_LAST), chosen.stream().map(StartChoice::way).toList());
    }

    @Test
    void threeStepsByPointer(FxRobot robot) throws Exception {
        until(() -> desk.probes().isPresent());
        robot.clickOn("#row-0").clickOn("#start-take");
        robot.clickOn("#row-0").clickOn("#more").clickOn("#row-0");
        assertEquals(StartStep.GO, desk.step());
        robot.clickOn("#step-0");
        assertEquals(StartStep.CHOCOLATE, desk.step());
        robot.clickOn("#start-take").clickOn("#start-take").clickOn("#row-1").clickOn("#start-take");
        assertEquals(
                List.of(Optional.of("/dev/ttyDemo1")),
                chosen.stream().map(StartChoice::port).toList());
    }

    @Test
    void aProbeThatIsPluggedInShows(FxRobot robot) throws Exception {
        plugged.clear();
        until(() -> desk.probes().filter(List::isEmpty).isPresent());
        plugged.add(PROBES.get(1));
        until(() -> desk.probes().filter(seen -> seen.size() == 1).isPresent());
    }

    @Test
    void planAndSetupOpenBesideIt(FxRobot robot) {
        robot.type(KeyCode.P);
        assertTrue(Window.getWindows().stream().anyMatch(w -> w.getScene().getRoot() instanceof PlanScreen));
        robot.interact(() -> Window.getWindows().stream()
                .filter(w -> w.getScene().getRoot() instanceof PlanScreen)
                .findFirst()
                .orElseThrow()
                .hide());
        robot.interact(() -> window.screen().getScene().getWindow().requestFocus());
        robot.type(KeyCode.S);
        assertTrue(Window.getWindows().stream().anyMatch(w -> w.getScene().getRoot() instanceof SetupScreen));
        assertEquals(List.of(), chosen);
    }

    @AfterEach
    void closeAll(FxRobot robot) {
        robot.interact(() -> List.copyOf(Window.getWindows()).forEach(Window::hide));
    }

    static Stream<Arguments> pictures() {
        return Stream.of(Theme.values())
                .flatMap(theme -> Stream.of(StartStep.values())
                        .flatMap(step -> Stream.of(
                                Arguments.of(theme, step, 1366, 768),
                                Arguments.of(theme, step, 1920, 1080),
                                Arguments.of(theme, step, 2732, 1536))));
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3}")
    @MethodSource("pictures")
    void aPictureOfEachStep(Theme theme, StartStep step, int width, int height) throws Exception {
        StartDesk shown = desk(LAST);
        shown.saw(PROBES);
        shown.open(step);
        List<String> faults = new ArrayList<>();
        WritableImage image = drawn(shown, theme, width, height, faults);
        Png.write(
                image,
                FOLDER.resolve("start-" + (step.ordinal() + 1) + "-"
                        + theme.name().toLowerCase(Locale.ROOT) + "-" + width + "x" + height + ".png"));
        assertEquals(List.of(), faults);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("themes")
    void aPictureOfTheFirstTimeAndOfARefusal(Theme theme) throws Exception {
        StartDesk first = new StartDesk(
                new StartStock(stock(LAST).recipes(), List.of(), LastStart.NONE, Optional.empty(), Units.CELSIUS));
        first.saw(List.of());
        first.open(StartStep.GO);
        List<String> faults = new ArrayList<>();
        String name = theme.name().toLowerCase(Locale.ROOT) + ".png";
        Png.write(drawn(first, theme, 1366, 768, faults), FOLDER.resolve("start-first-time-" + name));
        StartDesk refused = desk(LAST);
        refused.saw(PROBES);
        refused.refuse("/dev/ttyDemo0 is held by another program (demo, process 4711), so no reading can be taken."
                + " Close that program and try again.");
        Png.write(drawn(refused, theme, 1366, 768, faults), FOLDER.resolve("start-refused-" + name));
        assertEquals(List.of(), faults);
    }

    static Stream<Theme> themes() {
        return Stream.of(Theme.values());
    }

    private static WritableImage drawn(StartDesk desk, Theme theme, int width, int height, List<String> faults)
            throws Exception {
        CompletableFuture<WritableImage> image = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                StartScreen screen = new StartScreen(desk, key -> {});
                screen.wear(theme);
                new Scene(screen, width, height);
                screen.applyCss();
                screen.layout();
                check(screen, width, height, faults);
                image.complete(screen.snapshot(null, null));
            } catch (Throwable failed) {
                image.completeExceptionally(failed);
            }
        });
        return image.get(60, TimeUnit.SECONDS);
    }

    /** Targets of 15 mm (design page) on a 15.6-inch screen of 1366 × 768 and larger; texts inside and large enough. */
    private static void check(Parent screen, int width, int height, List<String> faults) {
        double scale = new ScreenScale(Math.hypot(1366, 768) / (15.6 * 25.4)).pixels(15) * width / 1366.0;
        double smallest = 14 * Math.min(width / 1366.0, height / 768.0);
        for (Node node : screen.getChildrenUnmodifiable())
            if (node instanceof Button button
                    && button.isVisible()
                    && (button.getWidth() < scale || button.getHeight() < scale))
                faults.add(button.getId() + " is a small target: " + button.getWidth() + " × " + button.getHeight());
        for (Text text : texts(screen)) {
            Bounds at = text.localToScene(text.getBoundsInLocal());
            if (at.getMinX() < -0.5 || at.getMaxX() > width + 0.5 || at.getMaxY() > height + 0.5)
                faults.add("“" + text.getText() + "” leaves the window: " + at);
            if (text.getFont().getSize() < smallest) faults.add("“" + text.getText() + "” is small: " + text.getFont());
        }
    }

    private static List<Text> texts(Parent parent) {
        List<Text> texts = new ArrayList<>();
        for (Node node : parent.getChildrenUnmodifiable()) {
            if (!node.isVisible()) continue;
            if (node instanceof Text text && !text.getText().isBlank()) texts.add(text);
            if (node instanceof Parent inner) texts.addAll(texts(inner));
        }
        return texts;
    }
}
