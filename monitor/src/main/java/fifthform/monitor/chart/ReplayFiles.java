package fifthform.monitor.chart;

import fifthform.monitor.chart.ReplayDrawing.Purpose;
import fifthform.monitor.replay.ReplayChart;

/** A batch drawn into files, by the same drawing as on the screen. Needs no window. */
public final class ReplayFiles {
    private static final ReplayPlot DRAWING = new ReplayPlot(1600, 760, 16);

    private ReplayFiles() {}

    /** The drawing as an SVG file, in bright colours. */
    public static String svg(ReplayChart chart, String title) {
        SvgPen pen = new SvgPen(DRAWING.whole(), DRAWING.height(), title, Palette.BRIGHT.base());
        new ReplayDrawing(pen, DRAWING, Palette.BRIGHT, chart, Purpose.FILE).all();
        return pen.end();
    }
}
