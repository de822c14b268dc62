package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.replay.Desks;
import fifthform.monitor.replay.ReplayDesk;
import fifthform.monitor.view.ListsPane.Tab;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** Pictures of the Replay screen for people to look at, and the least a machine can say of them. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class ReplayPicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @TempDir
    Path folder;

    static Stream<Arguments> pictures() {
        return Stream.of(Theme.values())
                .flatMap(theme -> Stream.of(
                        Arguments.of("whole", theme, 1366, 768, 100),
                        Arguments.of("whole", theme, 1920, 1080, 100),
                        Arguments.of("whole", theme, 1366, 768, 200),
                        Arguments.of("whole", theme, 1366, 768, 300),
                        Arguments.of("lift", theme, 1366, 768, 100),
                        Arguments.of("alarms", theme, 1366, 768, 100),
                        Arguments.of("notes", theme, 1366, 768, 100),
                        Arguments.of("beside", theme, 1366, 768, 100),
                        Arguments.of("keys", theme, 1366, 768, 100)));
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3} {4} %")
    @MethodSource("pictures")
    void aPictureOfEachMoment(String name, Theme theme, int width, int height, int percent) throws Exception {
        WritableImage image = picture(name, theme, width, height, percent);
        String word = theme.name().toLowerCase(Locale.ROOT);
        Png.write(image, FOLDER.resolve("replay-" + name + "-" + word + "-" + width + "-" + percent + ".png"));
        assertEquals(width, image.getWidth(), 1);
        assertEquals(height, image.getHeight(), 1);
        assertTrue(colours(image) > 20, "an almost empty picture: " + colours(image) + " colours");
    }

    private WritableImage picture(String name, Theme theme, int width, int height, int percent) throws Exception {
        Path session = Desks.tape("demo-own-way", folder);
        Path other = Desks.tape("demo-unplugged", folder);
        ReplayDesk desk = Desks.withCauses(session);
        CompletableFuture<WritableImage> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                ReplayScreen screen = new ReplayScreen(new ReplayFeed(desk, () -> List.of(other)));
                screen.wear(theme);
                screen.scale(percent);
                new Scene(screen, width, height);
                set(name, desk, screen, other);
                for (int pass = 0; pass < 3; pass++) {
                    screen.applyCss();
                    screen.layout();
                    screen.show(desk.picture(screen.columns()));
                }
                answer.complete(screen.snapshot(null, null));
            } catch (Throwable failed) {
                answer.completeExceptionally(failed);
            }
        });
        return answer.get(60, TimeUnit.SECONDS);
    }

    private static void set(String name, ReplayDesk desk, ReplayScreen screen, Path other) {
        desk.seek(1_737_000_000_000L);
        desk.setA();
        desk.seek(1_996_000_000_000L);
        desk.setB();
        desk.nextEvent();
        desk.previousEvent();
        switch (name) {
            case "lift" -> {
                desk.seek(1_860_000_000_000L);
                desk.zoomIn();
                desk.zoomIn();
                desk.zoomIn();
                desk.fitHeight();
                desk.dropCursors();
            }
            case "alarms" -> screen.lists().open(Tab.ALARMS);
            case "notes" -> {
                desk.seek(1_884_000_000_000L);
                desk.note("lifted here, the phone rang");
                desk.seek(2_848_000_000_000L);
                desk.mark();
                screen.lists().open(Tab.NOTES);
            }
            case "beside" -> {
                desk.dropCursors();
                desk.lay(other);
                screen.lists().open(Tab.BESIDE);
            }
            case "keys" -> screen.lists().open(Tab.KEYS);
            default -> {}
        }
    }

    private static int colours(WritableImage image) {
        Set<Integer> seen = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 2)
            for (int x = 0; x < image.getWidth(); x += 2)
                seen.add(image.getPixelReader().getArgb(x, y));
        return seen.size();
    }
}
