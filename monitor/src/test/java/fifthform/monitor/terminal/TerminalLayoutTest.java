package fifthform.monitor.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.model.Moments;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.model.WatchPicture.Notice;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The terminal's lines without a terminal. */
class TerminalLayoutTest {
    private static final int[][] SIZES = {{80, 24}, {120, 40}, {200, 60}, {100, 30}, {60, 12}, {40, 8}, {20, 3}, {1, 1}
    };

    /** Codes 40 to 47 and 30 to 37 of ECMA-48, "select graphic rendition", and the bright ones above 90. */
    private static final Pattern FILLED = Pattern.compile("\u001b\\[([0-9;]*;)?(4[0-8]|10[0-7])[;m]");

    private static final Pattern WRITTEN = Pattern.compile("\u001b\\[([0-9;]*;)?(3[0-8]|9[0-7])[;m]");

    /** The forecast's stroke, and no word with a double o. */
    private static final Pattern FORECAST = Pattern.compile("(?<![a-z])oo+(?![a-z])");

    static Stream<Arguments> screens() {
        Map<String, WatchPicture> moments = new TreeMap<>(Moments.five());
        moments.put("6-crowded", Moments.crowded());
        moments.put("7-asked", Moments.asked());
        moments.put("8-unsure", Moments.unsure());
        moments.put("9-crystals", Moments.crystals());
        return moments.entrySet().stream()
                .flatMap(moment -> Stream.of(Letters.values())
                        .flatMap(letters -> Stream.of(SIZES)
                                .map(size ->
                                        Arguments.of(moment.getKey(), letters, size[0], size[1], moment.getValue()))));
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3}")
    @MethodSource("screens")
    void fillsTheTerminalAndNoMore(String name, Letters letters, int columns, int rows, WatchPicture picture) {
        List<AttributedString> lines = new TerminalLayout(Ink.COLOUR, letters).lay(picture, columns, rows);
        assertEquals(rows, lines.size());
        for (AttributedString line : lines) assertEquals(columns, line.columnLength(), line.toString());
        if (letters == Letters.ASCII)
            for (AttributedString line : lines)
                assertTrue(line.toString().chars().allMatch(c -> c < 128), line.toString());
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3}")
    @MethodSource("screens")
    void whatToDoIsAlwaysThere(String name, Letters letters, int columns, int rows, WatchPicture picture) {
        if (columns < 40) return;
        String all = text(new TerminalLayout(Ink.PLAIN, letters).lay(picture, columns, rows));
        String words = all.replaceAll("\\s+", " ");
        assertTrue(words.contains(letters.of(picture.band().headline())), all);
        assertEquals(
                picture.numeral().stale().isPresent() && rows > 4,
                all.contains("struck out") || all.contains("OLD, do not trust"),
                all);
    }

    @ParameterizedTest(name = "{0} {1} {2}×{3}")
    @MethodSource("screens")
    void nothingNeededIsMissing(String name, Letters letters, int columns, int rows, WatchPicture picture) {
        if (columns < 80 || name.startsWith("6")) return;
        String all = text(new TerminalLayout(Ink.PLAIN, letters).lay(picture, columns, rows));
        String words = all.replaceAll("\\s+", " ");
        for (String wanted : List.of(
                picture.band().aside(),
                picture.heading(),
                picture.subject(),
                picture.rate(),
                picture.numeral().stale().isPresent() ? "" : picture.numeral().doubt(),
                picture.clock(),
                picture.crystals().line(),
                picture.keys())) assertTrue(words.contains(letters.of(wanted)), wanted + " is missing from\n" + all);
        picture.outlooks().forEach(line -> assertTrue(words.contains(letters.of(line.detail())), line + "\n" + all));
        picture.alarms().forEach(alarm -> assertTrue(words.contains(letters.of(alarm.words())), alarm + "\n" + all));
        if (picture.alarms().isEmpty())
            picture.banner().ifPresent(notice -> assertTrue(words.contains(letters.of(notice)), all));
        assertEquals(picture.simulated(), words.contains(letters.of("practice · simulated bowl")), all);
        picture.ladder().limits().forEach(limit -> assertTrue(words.contains(limit.name()), limit + "\n" + all));
        if (picture.notice() == Notice.ASKED) {
            assertTrue(words.contains(letters.of(picture.banner().orElseThrow())), all);
            // Alarms and an answer together leave no room for the curve in the smallest terminal.
            if (rows < 30) return;
        }
        assertTrue(all.contains("***"), "no curve in\n" + all);
        assertEquals(
                !picture.trace().fan().isEmpty(),
                all.lines().anyMatch(line -> FORECAST.matcher(line).find()),
                "forecast in\n" + all);
    }

    /** How wide the turning point's band is shows on the ladder, and that of the forecast on the curve. */
    @Test
    void theBandsAreDrawn() {
        String wide = text(new TerminalLayout(Ink.PLAIN, Letters.ASCII).lay(Moments.unsure(), 120, 40));
        String narrow = text(new TerminalLayout(Ink.PLAIN, Letters.ASCII).lay(Moments.liftNow(), 120, 40));
        assertTrue(walls(wide) >= walls(narrow) + 3, wide + narrow);
        assertTrue(narrow.lines().anyMatch(line -> line.matches(".*\\|.*\\..*\\. *.*")), narrow);
    }

    /** Upright strokes between the ladder's own. */
    private static long walls(String all) {
        return all.lines().filter(line -> line.matches(".*\\|.{2}\\|.\\|.*")).count();
    }

    /** A line through the curve without its word would be a riddle, so it comes before that of now. */
    @Test
    void theLossOfTheSeedIsMarkedWithItsWord() {
        for (Letters letters : Letters.values()) {
            String all = text(new TerminalLayout(Ink.PLAIN, letters).lay(Moments.crystals(), 80, 24));
            assertTrue(all.contains(letters.of("'seed likely lost 13:43, 34.6 °C")), all);
            assertTrue(all.lines().filter(line -> line.contains("!")).count() >= 4, all);
        }
    }

    @Test
    void withoutColoursThereAreNone() {
        for (WatchPicture picture : Moments.five().values())
            for (AttributedString line : new TerminalLayout(Ink.PLAIN, Letters.UNICODE).lay(picture, 80, 24))
                assertFalse(filled(line) || WRITTEN.matcher(line.toAnsi()).find(), line.toAnsi());
    }

    @Test
    void eachToneHasShapeWordAndColour() {
        List<AttributedString> urgent = new TerminalLayout(Ink.COLOUR, Letters.ASCII).lay(Moments.unplugged(), 80, 24);
        AttributedString band = urgent.stream()
                .filter(line -> line.toString().contains("Adapter gone"))
                .findFirst()
                .orElseThrow();
        assertTrue(band.toString().contains("[#] URGENT"));
        assertTrue(filled(band));
        List<AttributedString> calm = new TerminalLayout(Ink.COLOUR, Letters.ASCII).lay(Moments.cooling(), 80, 24);
        AttributedString plain = calm.stream()
                .filter(line -> line.toString().contains("Cool it, keep stirring"))
                .findFirst()
                .orElseThrow();
        assertFalse(filled(plain));
    }

    private static boolean filled(AttributedString line) {
        return FILLED.matcher(line.toAnsi()).find();
    }

    private static String text(List<AttributedString> lines) {
        StringBuilder text = new StringBuilder();
        for (AttributedString line : lines) text.append(line.toString()).append('\n');
        return text.toString();
    }
}
