package fifthform.monitor.chart;

import java.util.Arrays;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** The same pen for a part of a page that begins further right and down. */
record Moved(Pen pen, double right, double down) implements Pen {
    @Override
    public void box(double x, double y, double width, double height, Color color) {
        pen.box(x + right, y + down, width, height, color);
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Color color, double width, double... dashes) {
        pen.line(x1 + right, y1 + down, x2 + right, y2 + down, color, width, dashes);
    }

    @Override
    public void path(double[] xs, double[] ys, Color color, double width, double... dashes) {
        pen.path(by(xs, right), by(ys, down), color, width, dashes);
    }

    @Override
    public void shape(double[] xs, double[] ys, Color fill, Color edge, double width) {
        pen.shape(by(xs, right), by(ys, down), fill, edge, width);
    }

    @Override
    public void words(
            String words, double x, double middleY, TextAlignment align, Typeface face, double size, Color color) {
        pen.words(words, x + right, middleY + down, align, face, size, color);
    }

    @Override
    public double width(String words, Typeface face, double size) {
        return pen.width(words, face, size);
    }

    @Override
    public void within(double x, double y, double width, double height) {
        pen.within(x + right, y + down, width, height);
    }

    @Override
    public void free() {
        pen.free();
    }

    private static double[] by(double[] values, double shift) {
        return Arrays.stream(values).map(value -> value + shift).toArray();
    }
}
