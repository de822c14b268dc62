package fifthform.monitor.chart;

import fifthform.monitor.replay.Happening;
import javafx.scene.paint.Color;

/** The marks of the three rows: each kind has a shape of its own, so that none is told by colour alone. */
final class MarkShapes {
    private final Pen pen;
    private final Palette palette;
    private final double size;

    MarkShapes(Pen pen, Palette palette, double size) {
        this.pen = pen;
        this.palette = palette;
        this.size = size;
    }

    void draw(Happening.Sign sign, double x, double y) {
        double r = size / 2;
        double edge = Math.max(1, size / 9);
        switch (sign) {
            case ACT -> polygon(24, 0, x, y, r * 0.85, palette.ink(), palette.ink(), 0);
            case SEEN -> polygon(24, 0, x, y, r * 0.8, palette.panel(), palette.ink(), edge);
            case CUE -> polygon(4, Math.PI / 4, x, y, r * 1.15, palette.ink(), palette.ink(), 0);
            case WORD -> polygon(4, Math.PI / 4, x, y, r * 0.95, palette.panel(), palette.ink(), edge);
            case ADVISE -> {
                polygon(24, 0, x, y, r * 0.85, palette.panel(), palette.forecast(), edge * 1.3);
                pen.line(x - r * 0.45, y, x + r * 0.45, y, palette.forecast(), edge * 1.3);
            }
            case PROMPT_HOT ->
                polygon(3, -Math.PI / 2, x, y + r * 0.2, r * 1.15, palette.prompt(), palette.ink(), edge);
            case PROMPT_COLD ->
                polygon(3, Math.PI / 2, x, y - r * 0.2, r * 1.15, palette.prompt(), palette.ink(), edge);
            case PROMPT -> polygon(3, 0, x, y, r * 1.1, palette.prompt(), palette.ink(), edge);
            case URGENT -> polygon(8, Math.PI / 8, x, y, r * 1.1, palette.limit(), palette.ink(), edge);
        }
    }

    /** A note made afterwards: a diamond. */
    void note(double x, double y) {
        polygon(4, 0, x, y, size * 0.55, palette.panel(), palette.ink(), Math.max(1, size / 9));
    }

    private void polygon(
            int corners, double turned, double x, double y, double r, Color fill, Color line, double edge) {
        double[] xs = new double[corners];
        double[] ys = new double[corners];
        for (int i = 0; i < corners; i++) {
            double angle = turned + 2 * Math.PI * i / corners;
            xs[i] = x + r * Math.cos(angle);
            ys[i] = y + r * Math.sin(angle);
        }
        pen.shape(xs, ys, fill, line, edge);
    }
}
