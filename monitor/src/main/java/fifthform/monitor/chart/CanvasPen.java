package fifthform.monitor.chart;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;

/** Draws on a canvas. */
final class CanvasPen implements Pen {
    private final GraphicsContext ink;

    CanvasPen(GraphicsContext ink) {
        this.ink = ink;
    }

    @Override
    public void box(double x, double y, double width, double height, Color color) {
        ink.setFill(color);
        ink.fillRect(x, y, width, height);
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Color color, double width, double... dashes) {
        path(new double[] {x1, x2}, new double[] {y1, y2}, color, width, dashes);
    }

    @Override
    public void path(double[] xs, double[] ys, Color color, double width, double... dashes) {
        ink.setStroke(color);
        ink.setLineWidth(width);
        ink.setLineJoin(StrokeLineJoin.ROUND);
        ink.setLineCap(dashes.length == 0 ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
        ink.setLineDashes(dashes);
        ink.beginPath();
        boolean broken = true;
        for (int i = 0; i < xs.length; i++) {
            boolean gap = Double.isNaN(xs[i]);
            if (!gap && broken) ink.moveTo(xs[i], ys[i]);
            if (!gap && !broken) ink.lineTo(xs[i], ys[i]);
            broken = gap;
        }
        ink.stroke();
        ink.setLineDashes();
    }

    @Override
    public void shape(double[] xs, double[] ys, Color fill, Color edge, double width) {
        ink.setFill(fill);
        ink.fillPolygon(xs, ys, xs.length);
        if (width <= 0) return;
        ink.setStroke(edge);
        ink.setLineWidth(width);
        ink.setLineJoin(StrokeLineJoin.MITER);
        ink.strokePolygon(xs, ys, xs.length);
    }

    @Override
    public void words(
            String words, double x, double middleY, TextAlignment align, Typeface face, double size, Color color) {
        ink.setFont(face.at(size));
        ink.setFill(color);
        ink.setTextAlign(align);
        ink.setTextBaseline(VPos.CENTER);
        ink.fillText(words, x, middleY);
    }

    @Override
    public double width(String words, Typeface face, double size) {
        return face.width(words, size);
    }

    @Override
    public void within(double x, double y, double width, double height) {
        ink.save();
        ink.beginPath();
        ink.rect(x, y, width, height);
        ink.clip();
    }

    @Override
    public void free() {
        ink.restore();
    }
}
