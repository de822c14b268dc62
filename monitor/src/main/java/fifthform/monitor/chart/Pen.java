package fifthform.monitor.chart;

import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** The strokes a drawing for the desk is made of, in pixels, so that it looks the same on the screen and in a file. */
interface Pen {
    /** Capitals are 0.73 of the size high, so that their middle lies this share of the size above their foot. */
    double CAPITALS_MIDDLE = 0.365;

    void box(double x, double y, double width, double height, Color color);

    void line(double x1, double y1, double x2, double y2, Color color, double width, double... dashes);

    /** A line through all points; NaN interrupts it. */
    void path(double[] xs, double[] ys, Color color, double width, double... dashes);

    /** A closed shape: filled with a colour, or only its edge. */
    void shape(double[] xs, double[] ys, Color fill, Color edge, double width);

    /** Slanted strokes inside a box: a range that is told from a plain fill without any colour. */
    default void hatch(double x, double y, double width, double height, Color color, double pitch, double strokeWidth) {
        if (width <= 0 || height <= 0) return;
        within(x, y, width, height);
        double first = Math.floor((x - height) / pitch) * pitch;
        for (double at = first; at < x + width; at += pitch) line(at, y + height, at + height, y, color, strokeWidth);
        free();
    }

    void words(String words, double x, double middleY, TextAlignment align, Typeface face, double size, Color color);

    /** How wide {@code words} come out. */
    double width(String words, Typeface face, double size);

    /** Until {@link #free}, nothing is drawn outside this box. */
    void within(double x, double y, double width, double height);

    void free();
}
