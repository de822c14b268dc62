package fifthform.monitor.chart;

import fifthform.monitor.notebook.SmallCurve;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.ChartText;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/**
 * Curves of batches on one scale of temperature, so that a glance down a column compares them: as small as a cell, or large
 * with degrees and minutes. Lines are told apart by their strokes and a letter at their end, never by colour alone.
 */
public final class CurveCanvas extends Region {
    /** All curves are drawn from here upwards, °C; what is beyond an edge is not drawn. */
    private static final double LOWEST = 24;

    /** As high as anybody melts, °C. */
    private static final double MELT = 50;

    /** What matters lies below this, °C: where space is dear, the melt is left out. */
    private static final double TEMPER = 40;

    private static final int[] DEGREES = {1, 2, 5, 10, 20};
    private static final int[] MINUTES = {5, 10, 20, 30, 60, 120, 240, 480};
    private static final double[][] STROKES = {{}, {9, 4}, {2, 3}};

    /**
     * One curve.
     *
     * @param curve the temperatures
     * @param zeroSeconds what of its time is the common zero, s
     * @param letter what stands at its end; empty for none
     */
    public record Line(SmallCurve curve, double zeroSeconds, String letter) {}

    /**
     * What is drawn.
     *
     * @param lines the curves, at most as many as there are strokes
     * @param workLowCelsius lower end of the working range; NaN where there is none to show
     * @param workHighCelsius its upper end
     * @param units of the degrees
     */
    public record Drawing(List<Line> lines, double workLowCelsius, double workHighCelsius, Units units) {
        /** Nothing. */
        public static final Drawing NONE = new Drawing(List.of(), Double.NaN, Double.NaN, Units.CELSIUS);

        public Drawing {
            lines = List.copyOf(lines);
        }
    }

    private final Canvas canvas = new Canvas();
    private final boolean scaled;
    private Drawing drawing = Drawing.NONE;
    private Palette palette = Palette.BRIGHT;
    private double letters = 13;

    private double left;
    private double bottom;
    private double highest = TEMPER;
    private final List<double[]> letterEnds = new ArrayList<>();
    private double fromSeconds;
    private double perSecond;

    /** A curve for a cell. */
    public static CurveCanvas small() {
        return new CurveCanvas(false);
    }

    /** One with degrees and minutes. */
    public static CurveCanvas large() {
        return new CurveCanvas(true);
    }

    private CurveCanvas(boolean scaled) {
        this.scaled = scaled;
        canvas.setManaged(false);
        getChildren().add(canvas);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    /** Shows curves, in these colours and with letters of this size, pixels. */
    public void show(Drawing next, String spoken, Palette colours, double letterPixels) {
        drawing = next;
        palette = colours;
        letters = letterPixels;
        setAccessibleText(spoken);
        draw();
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        if (width == canvas.getWidth() && height == canvas.getHeight()) return;
        canvas.setWidth(width);
        canvas.setHeight(height);
        draw();
    }

    private void draw() {
        double width = canvas.getWidth();
        double height = canvas.getHeight();
        GraphicsContext ink = canvas.getGraphicsContext2D();
        ink.clearRect(0, 0, width, height);
        if (width <= 0 || height <= 0 || drawing.lines().isEmpty()) return;
        // A small one stands in a row, on whatever ground that has.
        if (scaled) {
            ink.setFill(palette.panel());
            ink.fillRect(0, 0, width, height);
        }
        highest = scaled && drawing.lines().size() == 1 ? MELT : TEMPER;
        left = scaled ? letters * 3 : 1;
        bottom = scaled ? height - letters * 1.6 : height;
        boolean named = drawing.lines().stream().anyMatch(line -> !line.letter().isEmpty());
        double right = width - letters * (named ? 0.4 + 0.9 * drawing.lines().size() : 0.1);
        letterEnds.clear();
        fromSeconds = drawing.lines().stream()
                .mapToDouble(line -> -line.zeroSeconds())
                .min()
                .orElse(0);
        double toSeconds = drawing.lines().stream()
                .mapToDouble(line -> line.curve().seconds(line.curve().points() - 1) - line.zeroSeconds())
                .max()
                .orElse(1);
        perSecond = (right - left) / Math.max(1, toSeconds - fromSeconds);
        range(ink, right);
        if (scaled) scales(ink, right, toSeconds);
        for (int i = 0; i < drawing.lines().size(); i++) line(ink, i);
    }

    private void range(GraphicsContext ink, double right) {
        if (Double.isNaN(drawing.workLowCelsius())) return;
        double top = y(drawing.workHighCelsius());
        double height = Math.max(1, y(drawing.workLowCelsius()) - top);
        ink.setFill(palette.hatch());
        ink.fillRect(left, top, right - left, height);
    }

    private void scales(GraphicsContext ink, double right, double toSeconds) {
        ink.setFont(Typeface.REGULAR.at(letters * 0.9));
        ink.setLineWidth(1);
        ink.setTextBaseline(VPos.CENTER);
        ink.setTextAlign(TextAlignment.RIGHT);
        ink.setFill(palette.ink());
        double beside = left - letters * 0.4;
        ink.fillText(drawing.units().symbol(), beside, letters * 0.7);
        double degrees = degreesApart();
        double lowest = Math.ceil(drawing.units().shown(LOWEST) / degrees) * degrees;
        for (double shown = lowest; shown < drawing.units().shown(highest); shown += degrees) {
            double y = Math.round(y(drawing.units().celsius(shown))) + 0.5;
            if (y < 1.7 * letters || y > bottom - 0.5 * letters) continue;
            ink.setStroke(palette.hatch());
            ink.strokeLine(left, y, right, y);
            ink.fillText(Long.toString(Math.round(shown)), beside, y);
        }
        ink.fillText(ChartText.MINUTES.say(), beside - 0.4 * letters, bottom + letters * 0.9);
        ink.setTextAlign(TextAlignment.CENTER);
        double step = 60 * minutesApart();
        for (double at = Math.ceil(fromSeconds / step) * step; at <= toSeconds; at += step) {
            double x = Math.round(x(at)) + 0.5;
            ink.setStroke(palette.hatch());
            ink.strokeLine(x, bottom, x, bottom + letters * 0.3);
            ink.fillText(signed(Math.round(at / 60)), x, bottom + letters * 0.9);
        }
    }

    /** With a true minus. */
    private static String signed(long minutes) {
        return minutes < 0 ? "−" + -minutes : Long.toString(minutes);
    }

    /** Degrees between two lines that leave room for their figures. */
    private double degreesApart() {
        double perDegree = y(0) - y(drawing.units().celsius(drawing.units().shown(0) + 1));
        for (int degrees : DEGREES) if (degrees * perDegree > 1.4 * letters) return degrees;
        return DEGREES[DEGREES.length - 1];
    }

    /** Minutes between two marks that leave room for their figures. */
    private int minutesApart() {
        for (int minutes : MINUTES) if (60 * minutes * perSecond > 3 * letters) return minutes;
        return MINUTES[MINUTES.length - 1];
    }

    private void line(GraphicsContext ink, int number) {
        Line line = drawing.lines().get(number);
        Color color = number == 1 ? palette.compared() : palette.ink();
        ink.setStroke(color);
        ink.setLineWidth(scaled ? 2 : 1.4);
        ink.setLineDashes(STROKES[number % STROKES.length]);
        ink.save();
        ink.beginPath();
        ink.rect(left, 0, canvas.getWidth() - left, bottom);
        ink.clip();
        ink.beginPath();
        boolean broken = true;
        double lastX = Double.NaN;
        double lastY = Double.NaN;
        for (int i = 0; i < line.curve().points(); i++) {
            double celsius = line.curve().celsius(i);
            if (Double.isNaN(celsius)) {
                broken = true;
                continue;
            }
            lastX = x(line.curve().seconds(i) - line.zeroSeconds());
            lastY = y(celsius);
            if (broken) ink.moveTo(lastX, lastY);
            else ink.lineTo(lastX, lastY);
            broken = false;
        }
        ink.stroke();
        ink.restore();
        ink.setLineDashes();
        if (line.letter().isEmpty() || Double.isNaN(lastX)) return;
        ink.setFont(Typeface.BOLD.at(letters));
        ink.setFill(color);
        ink.setTextAlign(TextAlignment.LEFT);
        ink.setTextBaseline(VPos.CENTER);
        double end = lastX + letters * 0.3;
        lastY = Math.max(letters * 0.6, Math.min(bottom - letters * 0.6, lastY));
        for (double[] taken : letterEnds)
            if (Math.abs(taken[0] - end) < 0.9 * letters && Math.abs(taken[1] - lastY) < letters)
                end = taken[0] + 0.9 * letters;
        letterEnds.add(new double[] {end, lastY});
        ink.fillText(line.letter(), end, lastY);
    }

    private double x(double seconds) {
        return left + (seconds - fromSeconds) * perSecond;
    }

    private double y(double celsius) {
        return 1 + (highest - celsius) / (highest - LOWEST) * (bottom - 2);
    }
}
