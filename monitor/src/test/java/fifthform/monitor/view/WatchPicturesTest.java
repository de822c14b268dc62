package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Moments;
import fifthform.monitor.model.WatchPicture;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** Pictures of the Watch screen for people to look at, and the least a machine can say of them. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class WatchPicturesTest {
    private static final Path FOLDER = Path.of(System.getProperty("picture.folder", "target/pictures"));

    static Stream<Arguments> pictures() {
        Map<String, WatchPicture> moments = new TreeMap<>(Moments.five());
        moments.put("6-crowded", Moments.crowded());
        moments.put("7-asked", Moments.asked());
        moments.put("8-unsure", Moments.unsure());
        moments.put("9-looking-back", lookingBack());
        return moments.entrySet().stream()
                .flatMap(moment -> Stream.of(Theme.values())
                        .flatMap(theme -> Stream.of(1, 2)
                                .flatMap(scale -> Stream.of(new Dimension(1366, 768), new Dimension(1920, 1080))
                                        .filter(size -> scale == 1 || size.width == 1366)
                                        .map(size -> Arguments.of(
                                                moment.getKey(), theme, size, scale, moment.getValue())))));
    }

    @ParameterizedTest(name = "{0} {1} {2} ×{3}")
    @MethodSource("pictures")
    void aPictureOfEachMoment(String name, Theme theme, Dimension size, int scale, WatchPicture picture)
            throws Exception {
        WritableImage image = OnScreen.at(
                size.width * scale, size.height * scale, theme, picture, screen -> screen.snapshot(null, null));
        String word = theme.name().toLowerCase(Locale.ROOT);
        Png.write(
                image,
                FOLDER.resolve(
                        "watch-" + name + "-" + word + "-" + size.width + "x" + size.height + "-" + scale + "x.png"));
        assertEquals(size.width * scale, image.getWidth(), 1);
        assertEquals(size.height * scale, image.getHeight(), 1);
        assertTrue(colours(image) > 20, "an almost empty picture: " + colours(image) + " colours");
    }

    /** What is said while looking back is as large as every other word of the foot. */
    @Test
    void lookingBackIsSaidLargeEnough() throws Exception {
        double smallest = OnScreen.at(
                1366,
                768,
                Theme.BRIGHT,
                lookingBack(),
                screen -> screen.lookupAll(".words").stream()
                        .filter(node ->
                                node instanceof Text text && text.getText().startsWith("Looking back"))
                        .mapToDouble(node -> ((Text) node).getFont().getSize())
                        .min()
                        .orElseThrow());
        assertTrue(smallest >= 19, () -> "only " + smallest + " px");
    }

    /** The curve of ten minutes ago under a number of now. */
    private static WatchPicture lookingBack() {
        WatchPicture now = Moments.liftNow();
        WatchPicture.Trace t = now.trace();
        WatchPicture.Trace past = new WatchPicture.Trace(
                t.from(),
                t.to(),
                t.now(),
                t.bottomShown(),
                t.topShown(),
                t.bandLowShown(),
                t.bandHighShown(),
                t.limitShown(),
                t.points(),
                List.of(),
                t.flags(),
                t.gaps(),
                t.crystals(),
                Optional.of("looking back, 10 min ago"));
        return new WatchPicture(
                now.kitchen(),
                now.heading(),
                now.subject(),
                now.marks(),
                now.clock(),
                now.band(),
                now.numeral(),
                now.rate(),
                now.outlooks(),
                now.ladder(),
                past,
                now.tiles(),
                now.foot(),
                now.alarms(),
                now.keys(),
                Optional.of(
                        "Looking back, 10 min ago: number and alarms are of now · End or 20 s without a key: back to now"),
                now.banner(),
                now.notice(),
                now.why(),
                now.crystals());
    }

    private static int colours(WritableImage image) {
        Set<Integer> seen = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 2)
            for (int x = 0; x < image.getWidth(); x += 2)
                seen.add(image.getPixelReader().getArgb(x, y));
        return seen.size();
    }
}
