package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.Bloom;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.notebook.DemoBatches;
import fifthform.monitor.notebook.DemoBatches.Plan;
import fifthform.monitor.notebook.NotebookDesk;
import fifthform.monitor.settings.Units;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;

/** What becomes of the paths of photos. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class PhotoRowTest {
    private static final String GONE = "gone/bars.jpg";
    private static final String NO_PICTURE = "notes.png";

    @Test
    void picturesAreShownSmallAndWhatIsNoneIsSaid(@TempDir Path data) throws Exception {
        DemoBatches demo = new DemoBatches(data);
        Path session = demo.record(Plan.dark(32));
        ImageIO.write(
                new BufferedImage(1200, 900, BufferedImage.TYPE_INT_RGB),
                "png",
                session.resolveSibling("bars one.png").toFile());
        Files.writeString(session.resolveSibling(NO_PICTURE), "no picture\n");
        BarLook look = new BarLook(
                24,
                List.of(Bloom.NONE),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sureness.SURE);
        LookFile.beside(session, NotebookDemo.name(session))
                .add(
                        Instant.parse("2026-01-01T10:00:00Z"),
                        look,
                        List.of("bars one.png", GONE, NO_PICTURE),
                        Optional.empty());
        NotebookDesk desk = NotebookDemo.desk(demo, Units.CELSIUS);
        CompletableFuture<PhotoRow> loaded = new CompletableFuture<>();
        Platform.runLater(() -> {
            PhotoRow row = new PhotoRow();
            row.show(desk.shown().get(0), 13);
            new AnimationTimer() {
                @Override
                public void handle(long now) {
                    if (pictures(row).size() == 1
                            && pictures(row).get(0).getImage().getProgress() == 1) {
                        stop();
                        loaded.complete(row);
                    }
                }
            }.start();
        });
        PhotoRow row = loaded.get(30, TimeUnit.SECONDS);
        ImageView picture = pictures(row).get(0);
        assertEquals(9 * 13, picture.getImage().getHeight(), 1);
        assertEquals("Picture of the bars: bars one.png", picture.getAccessibleText());
        List<String> words = new ArrayList<>();
        for (Node node : row.lookupAll(".label")) if (node instanceof Label label) words.add(label.getText());
        assertTrue(words.contains("There is no picture gone/bars.jpg at the moment."), words.toString());
        assertTrue(words.contains("notes.png cannot be shown as a picture."), words.toString());
    }

    private static List<ImageView> pictures(PhotoRow row) {
        List<ImageView> found = new ArrayList<>();
        collect(row, found);
        return found;
    }

    private static void collect(javafx.scene.Parent parent, List<ImageView> found) {
        for (Node node : parent.getChildrenUnmodifiable()) {
            if (node instanceof ImageView view) found.add(view);
            else if (node instanceof javafx.scene.Parent inner && !(node instanceof Label)) collect(inner, found);
        }
    }
}
