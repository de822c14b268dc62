package fifthform.monitor.chart;

import fifthform.monitor.chart.ReplayDrawing.Purpose;
import fifthform.monitor.replay.ReplayChart;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;

/** A batch at a desk on a canvas; the same drawing also as a file. */
public final class ReplayCanvas extends Canvas {
    private Optional<ReplayChart> shown = Optional.empty();
    private Palette palette = Palette.BRIGHT;
    private ReplayPlot plot = new ReplayPlot(0, 0, 1);

    public ReplayCanvas() {
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    public void show(ReplayChart chart) {
        shown = Optional.of(chart);
        draw();
    }

    /** Takes the theme's colours. */
    public void colour(Palette colours) {
        palette = colours;
        draw();
    }

    /** Takes a new size. */
    public void size(ReplayPlot place) {
        if (place.equals(plot)) return;
        plot = place;
        setWidth(place.whole());
        setHeight(place.height());
        draw();
    }

    public ReplayPlot plot() {
        return plot;
    }

    /** The moment under a place on the canvas, s since the session's start. */
    public double secondsAt(double x) {
        if (shown.isEmpty()) return 0;
        ReplayChart chart = shown.get();
        double share = (x - plot.left()) / plot.width();
        return chart.fromSeconds() + Math.max(0, Math.min(1, share)) * (chart.toSeconds() - chart.fromSeconds());
    }

    private void draw() {
        GraphicsContext ink = getGraphicsContext2D();
        ink.clearRect(0, 0, getWidth(), getHeight());
        if (getHeight() <= 0 || getWidth() <= 0) return;
        shown.ifPresent(chart -> new ReplayDrawing(new CanvasPen(ink), plot, palette, chart, Purpose.SCREEN).all());
    }
}
