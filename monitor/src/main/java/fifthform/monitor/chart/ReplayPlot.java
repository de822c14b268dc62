package fifthform.monitor.chart;

/**
 * Where the parts of a drawing at a desk stand, for one size of letters; all in pixels from the top left.
 *
 * @param whole width of all
 * @param height height of all
 * @param em size of the letters
 */
public record ReplayPlot(double whole, double height, double em) {
    private static final double LEFT = 5.5;
    private static final double RIGHT = 8.2;
    private static final double ABOVE = 1.7;
    private static final double ROW = 1.35;
    private static final double STRIP = 1.4;
    private static final double TIMES = 1.6;

    /** Lower than this nothing can be read. */
    public static double leastHeight(double em) {
        return em * (ABOVE + 9 + 3 * ROW + STRIP + 1 + TIMES);
    }

    /** Left edge of the curve. */
    public double left() {
        return em * LEFT;
    }

    /** Right edge of the curve. */
    public double right() {
        return Math.max(left() + em, whole - em * RIGHT);
    }

    /** Between its edges, px. */
    public double width() {
        return right() - left();
    }

    double top() {
        return em * ABOVE;
    }

    double bottom() {
        return Math.max(top() + em, strip() - em * (3 * ROW + 0.5));
    }

    double panelHeight() {
        return bottom() - top();
    }

    /** Middle of one of the three rows, counted from the top. */
    double row(int place) {
        return bottom() + em * (0.4 + ROW * (place + 0.5));
    }

    /** Upper edge of the crystals' strip. */
    double strip() {
        return under() - em * (STRIP + 0.3);
    }

    double stripHeight() {
        return em * STRIP;
    }

    /** Lower end of everything but the scale of times. */
    double under() {
        return height - em * TIMES;
    }
}
