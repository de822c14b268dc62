package fifthform.monitor.chart;

import fifthform.monitor.chart.ReplayDrawing.Purpose;
import fifthform.monitor.replay.ReplayPicture;
import javafx.scene.text.TextAlignment;

/** A batch drawn into files, by the same drawing as on the screen. Needs no window. */
public final class ReplayFiles {
    private static final double LETTERS = 16;

    /** Height of the line with the marks. */
    private static final double MARKS = 32;

    private static final ReplayPlot DRAWING = new ReplayPlot(1600, 760, LETTERS);

    private ReplayFiles() {}

    /** The drawing as an SVG file, in bright colours; what must be known of the batch stands below it. */
    public static String svg(ReplayPicture picture) {
        String marks = String.join(", ", picture.marks());
        String title = picture.title() + (marks.isEmpty() ? "" : " (" + marks + ")");
        double below = marks.isEmpty() ? 0 : MARKS;
        SvgPen pen = new SvgPen(DRAWING.whole(), DRAWING.height() + below, title, Palette.BRIGHT.base());
        new ReplayDrawing(pen, DRAWING, Palette.BRIGHT, picture.chart().still(), Purpose.FILE).all();
        if (!marks.isEmpty())
            pen.words(
                    title,
                    LETTERS,
                    DRAWING.height() + MARKS / 2 - LETTERS / 4,
                    TextAlignment.LEFT,
                    Typeface.BOLD,
                    LETTERS,
                    Palette.BRIGHT.ink());
        return pen.end();
    }
}
