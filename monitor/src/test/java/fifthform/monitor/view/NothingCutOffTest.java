package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Help;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.Moments;
import fifthform.monitor.model.WatchPicture;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.text.Text;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;

/** Every text stands whole inside the window, is large enough and covers no other, at every size. */
@NeedsScreen
@ExtendWith(ApplicationExtension.class)
class NothingCutOffTest {
    private static final int[][] SIZES = {{1366, 768}, {2732, 1536}, {1024, 768}, {1920, 1080}, {800, 450}, {1280, 1024}
    };

    static Stream<Arguments> screens() {
        Map<String, WatchPicture> moments = new TreeMap<>(Moments.five());
        moments.put("6-crowded", Moments.crowded());
        moments.put("7-asked", Moments.asked());
        moments.put("8-unsure", Moments.unsure());
        moments.put("9-crystals", Moments.crystals());
        moments.put("9-crystals-asked", Help.WHY.over(Moments.crystals(), KeyMap.USUAL));
        return moments.entrySet().stream()
                .flatMap(moment -> Stream.of(Theme.values())
                        .flatMap(theme -> Stream.of(SIZES)
                                .map(size ->
                                        Arguments.of(moment.getKey(), theme, size[0], size[1], moment.getValue()))));
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3}")
    @MethodSource("screens")
    void everyTextIsWhole(String name, Theme theme, int width, int height, WatchPicture picture) throws Exception {
        List<String> faults = OnScreen.at(width, height, theme, picture, screen -> faults(screen, width, height));
        assertEquals(List.of(), faults);
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3}")
    @MethodSource("screens")
    void allWordsOfThePictureAreThere(String name, Theme theme, int width, int height, WatchPicture picture)
            throws Exception {
        List<String> texts = OnScreen.at(
                width,
                height,
                theme,
                picture,
                screen -> texts(screen).stream()
                        .map(text -> OnScreen.plain(text.getText()))
                        .toList());
        List<String> wanted = new ArrayList<>(
                List.of(picture.heading(), picture.subject(), picture.clock(), picture.rate(), picture.foot()));
        wanted.addAll(List.of(
                picture.band().headline(),
                picture.band().aside(),
                picture.numeral().whole(),
                picture.numeral().hundredths(),
                picture.numeral().unit(),
                picture.numeral().doubt()));
        picture.numeral().stale().ifPresent(wanted::add);
        wanted.add(picture.crystals().limits());
        if (picture.crystals().isSaid())
            wanted.add("crystals: " + picture.crystals().word());
        picture.undo().ifPresent(wanted::add);
        picture.marks().forEach(mark -> wanted.add(mark.word()));
        picture.outlooks().forEach(line -> wanted.addAll(List.of(line.label(), line.value(), line.detail())));
        picture.tiles().forEach(tile -> wanted.add(tile.title() + ", " + tile.unit()));
        picture.alarms().stream().limit(3).forEach(alarm -> wanted.addAll(List.of(alarm.words(), alarm.state())));
        if (picture.alarms().isEmpty() || picture.notice() == WatchPicture.Notice.ASKED)
            picture.banner().ifPresent(wanted::add);
        if (picture.simulated()) wanted.add(TopLine.PRACTICE.say());
        wanted.removeIf(String::isEmpty);
        wanted.replaceAll(OnScreen::plain);
        wanted.removeAll(texts);
        assertEquals(List.of(), wanted, "missing from " + texts);
    }

    static List<String> faults(WatchScreen screen, int width, int height) {
        List<String> faults = new ArrayList<>();
        List<Text> texts = texts(screen);
        assertTrue(texts.size() > 20, "only " + texts.size() + " texts");
        double smallest = 10.5 * Math.min(width / 1366.0, height / 768.0);
        for (Text text : texts) {
            String name = "“" + text.getText() + "”";
            Bounds at = text.localToScene(text.getBoundsInLocal());
            if (at.getMinX() < -0.5 || at.getMinY() < -0.5 || at.getMaxX() > width + 0.5 || at.getMaxY() > height + 0.5)
                faults.add(name + " leaves the window: " + at);
            if (text.getFont().getSize() < smallest) faults.add(name + " is too small: " + text.getFont());
            if (text.getText().contains("…") || text.getText().contains("...")) faults.add(name + " is cut");
        }
        for (int i = 0; i < texts.size(); i++)
            for (int j = i + 1; j < texts.size(); j++)
                if (covers(texts.get(i), texts.get(j)))
                    faults.add("“" + texts.get(i).getText() + "” covers “"
                            + texts.get(j).getText() + "”");
        return faults;
    }

    /** Whether the letters' own boxes, without the font's empty space above and below, overlap. */
    private static boolean covers(Text one, Text other) {
        double[] a = letters(one);
        double[] b = letters(other);
        return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
    }

    /** Left, top, right, bottom from the top of the first line's capitals to the last baseline, pixels. */
    private static double[] letters(Text text) {
        Bounds at = text.localToScene(text.getBoundsInLocal());
        double size = text.getFont().getSize();
        long lines = text.getText().chars().filter(c -> c == '\n').count();
        double line = at.getHeight() / (lines + 1);
        double ascent = text.getBaselineOffset();
        double top = at.getMinY() + ascent - size * Words.CAPITAL;
        double bottom = at.getMinY() + ascent + lines * line;
        return new double[] {at.getMinX() + 0.5, top + 0.5, at.getMaxX() - 0.5, bottom - 0.5};
    }

    static List<Text> texts(Parent parent) {
        List<Text> texts = new ArrayList<>();
        for (Node node : parent.getChildrenUnmodifiable()) {
            if (!node.isVisible()) continue;
            if (node instanceof Text text && !text.getText().isBlank()) texts.add(text);
            if (node instanceof Parent inner) texts.addAll(texts(inner));
        }
        return texts;
    }
}
