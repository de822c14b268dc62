package fifthform.monitor.chart;

import javafx.scene.paint.Color;

/**
 * The colours of one theme, for what style sheets cannot reach: canvases and tiles. A test holds them to the style
 * sheet of the same theme, which has the last word.
 *
 * @param base the window
 * @param panel behind the trace, tiles and ranges
 * @param ink text and measured line
 * @param quiet quiet text and ticks
 * @param hatch strokes of a hatched range
 * @param limit limits
 * @param forecast what has not happened yet
 * @param compared another batch laid beside
 * @param prompt fill of what needs action soon
 * @param promptText on {@code prompt}
 */
public record Palette(
        Color base,
        Color panel,
        Color ink,
        Color quiet,
        Color hatch,
        Color limit,
        Color forecast,
        Color compared,
        Color prompt,
        Color promptText) {
    public static final Palette BRIGHT = new Palette(
            Color.web("#DCDDD9"),
            Color.web("#ECEDEA"),
            Color.web("#15191C"),
            Color.web("#5F6467"),
            Color.web("#B9BBB6"),
            Color.web("#A3280A"),
            Color.web("#0B5C8F"),
            Color.web("#A07C00"),
            Color.web("#F2B705"),
            Color.web("#000000"));

    public static final Palette DARK = new Palette(
            Color.web("#1E2225"),
            Color.web("#262B2F"),
            Color.web("#ECEEEF"),
            Color.web("#98A1A6"),
            Color.web("#4A5157"),
            Color.web("#E8542A"),
            Color.web("#4FA8DD"),
            Color.web("#E9D27A"),
            Color.web("#FFD23F"),
            Color.web("#000000"));
}
