package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.chart.Palette;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Canvases wear the style sheet's colours, and those can be told apart (WCAG 2.x, 1.4.3 and 1.4.11). */
class ColoursTest {
    private static final Pattern COLOUR = Pattern.compile("-ff-([a-z-]+): (#[0-9A-Fa-f]{6});");

    @ParameterizedTest
    @EnumSource(Theme.class)
    void paletteIsTheStyleSheets(Theme theme) throws IOException {
        Map<String, Color> sheet = sheet(theme);
        Palette palette = theme.palette();
        Map<String, Color> canvas = new TreeMap<>(Map.of(
                "base", palette.base(),
                "panel", palette.panel(),
                "ink", palette.ink(),
                "quiet", palette.quiet(),
                "hatch", palette.hatch(),
                "limit", palette.limit(),
                "forecast", palette.forecast(),
                "compared", palette.compared(),
                "prompt", palette.prompt(),
                "prompt-text", palette.promptText()));
        sheet.keySet().retainAll(canvas.keySet());
        assertEquals(canvas, sheet);
    }

    /** The table of the design page, typed in again here. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void theDesignsColours(Theme theme) throws IOException {
        Map<String, Color> sheet = sheet(theme);
        String[] names = {"base", "panel", "ink", "quiet", "urgent", "urgent-text", "prompt", "prompt-text", "advise"};
        String[] bright = {"#DCDDD9", "#ECEDEA", "#15191C", "#5F6467", "#A3280A", "white", "#F2B705", "black", "#0B5C8F"
        };
        String[] dark = {"#1E2225", "#262B2F", "#ECEEEF", "#98A1A6", "#E8542A", "black", "#FFD23F", "black", "#4FA8DD"};
        for (int i = 0; i < names.length; i++)
            assertEquals(Color.web(theme == Theme.BRIGHT ? bright[i] : dark[i]), sheet.get(names[i]), names[i]);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void textAndLinesStandOut(Theme theme) throws IOException {
        Map<String, Color> sheet = sheet(theme);
        atLeast(4.5, sheet, "ink", "base");
        atLeast(4.5, sheet, "ink", "panel");
        atLeast(4.5, sheet, "base", "ink");
        atLeast(4.5, sheet, "urgent-text", "urgent");
        atLeast(4.5, sheet, "prompt-text", "prompt");
        // The desk: warnings in words, borders of buttons and fields, and what is chosen in a list without the focus.
        atLeast(4.5, sheet, "warning", "base");
        atLeast(4.5, sheet, "warning", "panel");
        atLeast(4.5, sheet, "ink", "rule");
        atLeast(3.0, sheet, "quiet", "rule");
        // Large text only: quiet words on the base are never below 18 pt at the design's own size.
        atLeast(3.0, sheet, "quiet", "base");
        atLeast(4.5, sheet, "quiet", "panel");
        for (String line : new String[] {"ink", "limit", "forecast", "compared", "advise"})
            atLeast(3.0, sheet, line, "panel");
    }

    /** Who sees red, green or blue not at all still tells the priorities apart, and the lines of the curve. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void prioritiesAndLinesDifferForEverybody(Theme theme) throws IOException {
        Map<String, Color> sheet = sheet(theme);
        List<String> close = new ArrayList<>();
        for (List<String> group :
                List.of(List.of("urgent", "prompt", "advise"), List.of("ink", "forecast", "limit", "compared")))
            for (SeenBy eye : SeenBy.values())
                for (int i = 0; i < group.size(); i++)
                    for (int j = i + 1; j < group.size(); j++) {
                        double difference =
                                SeenBy.difference(eye.sees(sheet.get(group.get(i))), eye.sees(sheet.get(group.get(j))));
                        if (difference < 14)
                            close.add(String.format(
                                    Locale.ROOT, "%s %s %s %.1f", eye, group.get(i), group.get(j), difference));
                    }
        assertEquals(List.of(), close);
    }

    /** A pair of Sharma, Wu and Dalal, "The CIEDE2000 Color-Difference Formula", 2005, table 1; from memory. */
    @Test
    void theDifferenceIsThePublishedOne() {
        assertEquals(
                2.0425, SeenBy.difference(new double[] {50, 2.6772, -79.7751}, new double[] {50, 0, -82.7485}), 1e-4);
        assertEquals(27.1492, SeenBy.difference(new double[] {50, 2.5, 0}, new double[] {73, 25, -18}), 1e-4);
    }

    private static void atLeast(double wanted, Map<String, Color> sheet, String one, String other) {
        double ratio = contrast(sheet.get(one), sheet.get(other));
        assertTrue(ratio >= wanted, String.format(Locale.ROOT, "%s on %s is %.2f:1", one, other, ratio));
    }

    /** Contrast ratio, W3C WCAG 2.1, "contrast ratio" and "relative luminance"; from memory. */
    private static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    private static Map<String, Color> sheet(Theme theme) throws IOException {
        String name = theme.name().toLowerCase(Locale.ROOT) + ".css";
        try (InputStream bytes = Theme.class.getResourceAsStream(name)) {
            Map<String, Color> colours = new TreeMap<>();
            Matcher matcher = COLOUR.matcher(new String(bytes.readAllBytes(), StandardCharsets.UTF_8));
            while (matcher.find()) colours.put(matcher.group(1), Color.web(matcher.group(2)));
            return colours;
        }
    }
}
