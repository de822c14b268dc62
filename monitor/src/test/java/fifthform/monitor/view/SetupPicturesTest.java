package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.view.SetupScreen.Section;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Text;
import javafx.stage.Screen;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** Pictures of Setup for people to look at; and that no words on it are cut off. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class SetupPicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @TempDir
    static Path home;

    static Stream<Arguments> pictures() {
        return Stream.of(Theme.values())
                .flatMap(theme -> Stream.of(Section.values())
                        .flatMap(section -> Stream.of(
                                Arguments.of(theme, section, 1366, 768, 100),
                                Arguments.of(theme, section, 1920, 1080, 100),
                                Arguments.of(theme, section, 1366, 768, 200),
                                Arguments.of(theme, section, 1366, 768, 300))));
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3} {4} %")
    @MethodSource("pictures")
    void aPictureOfEachPart(Theme theme, Section section, int width, int height, int percent) throws Exception {
        Folders folders = Folders.of("Linux", Map.of(), Path.of("/home/demo")).withData(home.resolve("data"));
        Folders kept = new Folders(folders.data(), folders.sessions(), home.resolve(theme.name()), folders.state());
        new Bowls(kept.bowls()).keep(KeptBowl.named("demo steel", BowlMaterial.STEEL));
        SetupDesk desk = new SetupDesk(kept, () -> Instant.parse("2026-02-03T18:00:00Z"));
        desk.set("theme", theme.name().toLowerCase(Locale.ROOT));
        desk.set("key-bowl-moved", "page-down");
        desk.say("");
        CompletableFuture<WritableImage> answer = new CompletableFuture<>();
        List<String> cut = new ArrayList<>();
        Platform.runLater(() -> {
            try {
                SetupScreen screen = new SetupScreen(desk, Screen::getPrimary, volume -> Optional.empty());
                Scene scene = new Scene(screen, width, height);
                screen.scale(percent);
                desk.say("");
                screen.open(section);
                for (int i = 0; i < 3; i++) {
                    screen.applyCss();
                    screen.layout();
                }
                cut.addAll(cutOff(screen));
                // How to get on, and back to smaller letters, stands there at every size.
                Node hints = screen.lookup("#keys");
                if (!isShown(hints)
                        || hints.localToScene(hints.getBoundsInLocal()).getMaxY() > height
                        || !((Labeled) hints).getText().contains("Ctrl")) cut.add("no hints");
                answer.complete(scene.snapshot(null));
            } catch (Throwable failed) {
                answer.completeExceptionally(failed);
            }
        });
        WritableImage image = answer.get(60, TimeUnit.SECONDS);
        Png.write(
                image,
                FOLDER.resolve("setup-" + section.name().toLowerCase(Locale.ROOT) + "-"
                        + theme.name().toLowerCase(Locale.ROOT) + "-" + width + "x" + height + "-" + percent + ".png"));
        assertEquals(List.of(), cut);
    }

    private static List<String> cutOff(SetupScreen screen) {
        List<String> cut = new ArrayList<>();
        for (Node node : screen.lookupAll(".label, .button")) {
            if (!(node instanceof Labeled label) || label.getText() == null || !isShown(node)) continue;
            for (Node part : label.lookupAll(".text"))
                if (part instanceof Text text
                        && part.getParent() == label
                        && !text.getText().strip().equals(label.getText().strip()))
                    cut.add(label.getText() + " → " + text.getText());
        }
        return cut;
    }

    private static boolean isShown(Node node) {
        for (Node each = node; each != null; each = each.getParent()) if (!each.isVisible()) return false;
        return true;
    }
}
