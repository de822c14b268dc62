package fifthform.monitor.chart;

import fifthform.monitor.chart.LadderCanvas.Reading;
import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Limit;
import javafx.scene.canvas.GraphicsContext;

/** What every ladder of limits is drawn of, but for its words: walls, target range, limits, forecast and pointer. */
final class Rails {
    private static final double END = 14;

    private final GraphicsContext ink;
    private final Brush brush;
    private final Ladder ladder;
    private final Palette palette;
    private final double leftWall;
    private final double rightWall;
    private final double top;
    private final double bottom;

    /** @param leftWall and {@code rightWall} in units, {@code height} in pixels */
    Rails(
            GraphicsContext ink,
            Brush brush,
            Ladder ladder,
            Palette palette,
            double leftWall,
            double rightWall,
            double height) {
        this.ink = ink;
        this.brush = brush;
        this.ladder = ladder;
        this.palette = palette;
        this.leftWall = leftWall;
        this.rightWall = rightWall;
        top = brush.px(END);
        bottom = height - brush.px(END);
    }

    /** Where a temperature stands, pixels; what lies outside the scale, at its end. */
    double y(double shown) {
        double share = (shown - ladder.bottomShown()) / (ladder.topShown() - ladder.bottomShown());
        return bottom - Math.max(0, Math.min(1, share)) * (bottom - top);
    }

    void range() {
        double high = y(ladder.bandHighShown());
        double width = brush.px(rightWall - leftWall);
        double height = y(ladder.bandLowShown()) - high;
        brush.box(brush.px(leftWall), high, width, height, palette.panel());
        brush.hatch(brush.px(leftWall), high, width, height, palette.hatch());
    }

    void walls() {
        for (double wall : new double[] {leftWall, rightWall})
            brush.line(brush.px(wall), top, brush.px(wall), bottom, palette.ink(), 3);
    }

    void limits() {
        for (Limit limit : ladder.limits()) {
            if (!isOnScale(limit)) continue;
            double y = y(limit.atShown());
            double units = limit.weight() == Limit.Weight.STRONG ? 6 : 3;
            brush.line(brush.px(leftWall - 6), y, brush.px(rightWall + 6), y, palette.limit(), units);
        }
    }

    boolean isOnScale(Limit limit) {
        return limit.atShown() <= ladder.topShown() && limit.atShown() >= ladder.bottomShown();
    }

    void peak() {
        if (ladder.peakShown().isEmpty()) return;
        double x = brush.px((leftWall + rightWall) / 2);
        double y = y(ladder.peakShown().getAsDouble());
        double low = y(ladder.peakLowShown().orElse(ladder.peakShown().getAsDouble()));
        double high = y(ladder.peakHighShown().orElse(ladder.peakShown().getAsDouble()));
        double half = brush.px(16);
        brush.line(x, low, x, high, palette.forecast(), 5);
        brush.line(x - half, low, x + half, low, palette.forecast(), 5);
        brush.line(x - half, high, x + half, high, palette.forecast(), 5);
        double radius = brush.px(9);
        ink.setFill(palette.panel());
        ink.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
        ink.setStroke(palette.forecast());
        ink.setLineWidth(brush.px(4));
        ink.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** A pointer; off the scale it points along the ladder, out of it. */
    void now(Reading reading) {
        if (ladder.nowShown().isEmpty()) return;
        double now = ladder.nowShown().getAsDouble();
        double y = y(now);
        double tip = brush.px(leftWall - 4);
        double length = brush.px(60);
        double half = brush.px(17);
        if (now > ladder.topShown() || now < ladder.bottomShown()) {
            double out = now > ladder.topShown() ? -1 : 1;
            double foot = y - out * length / 2;
            pointer(reading, new double[] {tip - half, tip - 2 * half, tip}, new double[] {
                y + out * brush.px(8), foot, foot
            });
        } else {
            pointer(reading, new double[] {tip - length, tip, tip - length}, new double[] {y - half, y, y + half});
        }
    }

    private void pointer(Reading reading, double[] x, double[] y) {
        ink.setFill(reading == Reading.GOOD ? palette.ink() : palette.base());
        ink.fillPolygon(x, y, 3);
        ink.setStroke(palette.ink());
        ink.setLineWidth(brush.px(reading == Reading.GOOD ? 1 : 4));
        ink.strokePolygon(x, y, 3);
    }
}
