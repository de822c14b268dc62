package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.setup.Approach;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Tone;
import fifthform.simulator.scenario.Scenarios;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** The picture that the README shows: the practice batch itself, at the moment when it says lift. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class PracticePictureTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @Test
    void thePracticeBatchWhenItSaysLift() throws Exception {
        WatchPicture picture = whenItSaysLift();
        assertEquals(Tone.CUE, picture.band().tone());
        assertTrue(picture.simulated());
        for (Theme theme : Theme.values()) {
            WritableImage image = OnScreen.at(1366, 768, theme, picture, screen -> screen.snapshot(null, null));
            String word = theme.name().toLowerCase(java.util.Locale.ROOT);
            Png.write(image, FOLDER.resolve("practice-lift-now-" + word + ".png"));
        }
    }

    private static WatchPicture whenItSaysLift() {
        List<WatchPicture> lift = new ArrayList<>();
        Path noRecipes = FOLDER.resolve("no-own-recipes");
        WatchedBatch.through(Scenarios.FIRST, Approach.ONE_LIFT, noRecipes, (told, picture) -> {
            boolean now = told.stream().anyMatch(e -> e instanceof Event.CueGiven cue && cue.cue() == CueId.LIFT_NOW);
            if (now && lift.isEmpty()) lift.add(picture.get());
        });
        return lift.get(0);
    }
}
