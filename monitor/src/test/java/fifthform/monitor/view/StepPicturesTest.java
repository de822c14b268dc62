package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Event;
import fifthform.curves.setup.Approach;
import fifthform.monitor.model.Help;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Tone;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** Pictures of every step of a practice batch by short dips, as it is said and as its reason is asked for. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class StepPicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @Test
    void everyStepOfABatchByDips() throws Exception {
        Map<String, WatchPicture> steps = steps(System.getProperty("picture.scenario", "glass-bowl"));
        for (Map.Entry<String, WatchPicture> step : steps.entrySet()) {
            WatchPicture picture = step.getValue();
            write("step-" + step.getKey(), picture);
            write("step-" + step.getKey() + "-why", Help.WHY.over(picture, KeyMap.USUAL));
        }
        for (String step : List.of("melted", "stop-cooling", "crystals-enough", "off-now", "wipe-and-stir", "put-back"))
            assertTrue(steps.containsKey(step), step + " is not in " + steps.keySet());
    }

    private static void write(String name, WatchPicture picture) throws Exception {
        for (Theme theme : Theme.values()) {
            WritableImage image = OnScreen.at(1366, 768, theme, picture, screen -> screen.snapshot(null, null));
            Png.write(image, FOLDER.resolve(name + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png"));
        }
    }

    /** The first picture of each step, by its word. */
    private static Map<String, WatchPicture> steps(String name) {
        Approach approach =
                Approach.fromWord(System.getProperty("picture.lift", "touches")).orElseThrow();
        Map<String, WatchPicture> steps = new TreeMap<>();
        WatchedBatch.through(name, approach, FOLDER.resolve("no-own-recipes"), (told, picture) -> {
            WatchPicture now = picture.get();
            for (Event event : told)
                if (event instanceof Event.CueGiven cue)
                    steps.putIfAbsent(cue.cue().word(), now);
            if (now.outlooks().stream().anyMatch(line -> line.value().contains(" to ")))
                steps.putIfAbsent("unsure", now);
            if (now.band().tone() == Tone.CALM)
                steps.putIfAbsent("calm " + now.band().headline().replaceAll("[^A-Za-z]+", "-"), now);
        });
        return steps;
    }
}
