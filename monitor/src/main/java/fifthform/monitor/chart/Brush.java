package fifthform.monitor.chart;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** The few strokes both canvases are made of, in design units: 1 unit is 1/1600 of the design's width. */
final class Brush {
    private final GraphicsContext ink;
    private final double unit;
    private final List<Written> written = new ArrayList<>();

    Brush(GraphicsContext ink, double unit) {
        this.ink = ink;
        this.unit = unit;
    }

    /** Pixels of {@code units}. */
    double px(double units) {
        return units * unit;
    }

    void line(double x1, double y1, double x2, double y2, Color color, double widthUnits) {
        ink.setStroke(color);
        ink.setLineWidth(px(widthUnits));
        ink.strokeLine(x1, y1, x2, y2);
    }

    void box(double x, double y, double width, double height, Color color) {
        ink.setFill(color);
        ink.fillRect(x, y, width, height);
    }

    /** Slanted strokes inside a box: a range that is told from a plain fill without any colour. */
    void hatch(double x, double y, double width, double height, Color color) {
        if (width <= 0 || height <= 0) return;
        ink.save();
        ink.beginPath();
        ink.rect(x, y, width, height);
        ink.clip();
        double pitch = px(14);
        for (double start = x - height; start < x + width; start += pitch) {
            line(start, y + height, start + height, y, color, 3);
        }
        ink.restore();
    }

    void words(String words, double x, double middleY, TextAlignment align, Typeface face, double units, Color color) {
        ink.setFont(face.at(px(units)));
        ink.setFill(color);
        ink.setTextAlign(align);
        ink.setTextBaseline(VPos.CENTER);
        ink.fillText(words, x, middleY);
        written.add(new Written(words, px(units), middleY));
    }

    /** All words so far. */
    List<Written> written() {
        return List.copyOf(written);
    }

    /** The size in units, at most {@code units}, at which {@code words} are no wider than {@code pixels}. */
    double fitting(String words, Typeface face, double units, double pixels) {
        double width = face.width(words, px(units));
        return width <= pixels ? units : units * pixels / width;
    }
}
