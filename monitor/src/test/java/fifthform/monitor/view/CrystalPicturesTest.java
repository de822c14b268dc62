package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Event;
import fifthform.curves.setup.Approach;
import fifthform.monitor.model.Help;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Flag;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** What practice batches that go wrong show of the crystals, with pictures of it. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class CrystalPicturesTest {
    /** A picture after each input would take minutes and show nothing more. */
    private static final int EVERY = 40;

    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    @Test
    void cooledTooLittleIsNeverSaidToBeEnough() throws Exception {
        Map<String, WatchPicture> seen = through("too-little-cooling");
        assertTrue(seen.get("the end").crystals().isSaid(), seen.keySet()::toString);
        assertTrue(seen.keySet().stream().noneMatch(k -> k.startsWith("word enough")), seen.keySet()::toString);
    }

    @Test
    void overCooledComesToEnough() throws Exception {
        Map<String, WatchPicture> seen = through("over-cooled");
        assertTrue(seen.keySet().stream().anyMatch(k -> k.startsWith("word enough")), seen.keySet()::toString);
        assertFalse(seen.containsKey("question"), "the cold water shows that it is stirred");
    }

    @Test
    void heatThatCostsTheSeedIsMarkedAndSaidWithItsFigures() throws Exception {
        Map<String, WatchPicture> seen = through("scalding-bath");
        WatchPicture lost = seen.get("lost");
        Flag flag = lost.trace().flags().stream()
                .filter(f -> f.weight() == Flag.Weight.THROUGH)
                .findFirst()
                .orElseThrow();
        assertTrue(flag.word().matches("seed likely lost \\d\\d:\\d\\d, \\d\\d\\.\\d °C"), flag.word());
        String survived = seen.get("survived last").crystals().survived();
        assertTrue(
                survived.matches("What survived 3[45]\\.\\d °C \\(\\d+ min.* above 32\\.5\\): .* · cool again, .*"),
                survived);
    }

    @Test
    void warmAndLongSaysTooFewBeforeItIsInDoubt() throws Exception {
        Map<String, WatchPicture> seen = through("warm-and-long");
        assertTrue(seen.containsKey("word too few"), seen.keySet()::toString);
        assertFalse(seen.containsKey("lost"), seen.keySet()::toString);
    }

    /** Every word, loss and survival of a batch, where it first stands; each drawn in both colours. */
    private static Map<String, WatchPicture> through(String name) throws Exception {
        Map<String, WatchPicture> seen = new TreeMap<>();
        int[] inputs = {0};
        WatchedBatch.through(name, Approach.ONE_LIFT, FOLDER.resolve("no-own-recipes"), (told, picture) -> {
            if (told.isEmpty() && inputs[0]++ % EVERY != 0) return;
            WatchPicture now = picture.get();
            for (Event event : told) {
                if (event instanceof Event.SeedJudged)
                    seen.putIfAbsent("word " + now.crystals().word(), now);
                if (event instanceof Event.SeedLost) seen.putIfAbsent("lost", now);
                if (event instanceof Event.PhaseChanged changed)
                    seen.putIfAbsent("phase " + changed.to().word(), now);
            }
            if (!now.crystals().question().isEmpty()) seen.putIfAbsent("question", now);
            if (now.foot().startsWith("What survived")) {
                seen.putIfAbsent("survived", now);
                seen.put("survived last", now);
            }
            seen.put("the end", now);
            assertEquals(now.crystals().isSaid(), now.crystals().limits().contains("prove on a sample"));
            assertFalse(now.crystals().word().contains("%"));
            if (now.heading().startsWith("melt")) assertFalse(now.crystals().isSaid(), now.heading());
        });
        for (Map.Entry<String, WatchPicture> one : seen.entrySet()) {
            String file = "crystals-" + name + "-" + one.getKey().replaceAll("[^a-z]+", "-");
            write(file, one.getValue());
            write(file + "-why", Help.WHY.over(one.getValue(), KeyMap.USUAL));
        }
        return seen;
    }

    private static void write(String name, WatchPicture picture) throws Exception {
        for (Theme theme : Theme.values()) {
            WritableImage image = OnScreen.at(1366, 768, theme, picture, screen -> screen.snapshot(null, null));
            Png.write(image, FOLDER.resolve(name + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png"));
        }
    }
}
