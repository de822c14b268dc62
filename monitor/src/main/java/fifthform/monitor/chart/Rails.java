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
        // The hatch alone is too faint to be found from the stove.
        for (double end : new double[] {high, high + height})
            brush.line(brush.px(leftWall), end, brush.px(rightWall), end, palette.quiet(), 2);
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
        return isOnScale(limit.atShown());
    }

    private boolean isOnScale(double shown) {
        return shown <= ladder.topShown() && shown >= ladder.bottomShown();
    }

    /** Where it will turn, with its band. What lies off the scale is an arrow out of it: at its end it would be believed. */
    void peak() {
        if (ladder.peakShown().isEmpty()) return;
        double peak = ladder.peakShown().getAsDouble();
        double low = ladder.peakLowShown().orElse(peak);
        double high = ladder.peakHighShown().orElse(peak);
        double x = brush.px((leftWall + rightWall) / 2);
        brush.line(x, y(low), x, y(high), palette.forecast(), 5);
        end(low, x);
        end(high, x);
        if (!isOnScale(peak)) return;
        double radius = brush.px(9);
        ink.setFill(palette.panel());
        ink.fillOval(x - radius, y(peak) - radius, 2 * radius, 2 * radius);
        ink.setStroke(palette.forecast());
        ink.setLineWidth(brush.px(4));
        ink.strokeOval(x - radius, y(peak) - radius, 2 * radius, 2 * radius);
    }

    /** A bar across one end of the forecast's band, or the arrow that points to it. */
    private void end(double shown, double x) {
        double half = brush.px(16);
        double y = y(shown);
        if (isOnScale(shown)) {
            brush.line(x - half, y, x + half, y, palette.forecast(), 5);
            return;
        }
        double out = shown > ladder.topShown() ? -1 : 1;
        double foot = y - out * brush.px(END);
        ink.setFill(palette.forecast());
        ink.fillPolygon(
                new double[] {x - half, x, x + half}, new double[] {foot, y + out * brush.px(END - 2), foot}, 3);
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
