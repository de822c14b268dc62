package fifthform.monitor.chart;

import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Limit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;

/**
 * The ladder of limits, to scale: the eye compares the distances from <em>now</em> to each limit. Redraws only when
 * what it shows has changed.
 */
public final class LadderCanvas extends Canvas {
    private static final double LEFT_WALL = 126;
    private static final double RIGHT_WALL = 246;
    private static final double NAMES = 264;

    private Optional<Ladder> shown = Optional.empty();
    private Reading reading = Reading.GOOD;
    private Palette palette = Palette.BRIGHT;
    private double unit = 1;

    public LadderCanvas() {
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    /** Whether the pointer stands for what is, or only for what was. */
    public enum Reading {
        GOOD,
        /** Drawn hollow: a solid pointer would claim that the chocolate is still there. */
        OLD
    }

    /** Shows {@code ladder}; nothing happens where it is what is shown already. */
    public void show(Ladder ladder, Reading quality) {
        if (quality == reading && shown.filter(ladder::equals).isPresent()) return;
        shown = Optional.of(ladder);
        reading = quality;
        setAccessibleText(spoken(ladder));
        draw();
    }

    /** Takes the theme's colours. */
    public void colour(Palette colours) {
        palette = colours;
        draw();
    }

    /** Takes a new size; {@code unitPixels} is one design unit. */
    public void size(double width, double height, double unitPixels) {
        if (width == getWidth() && height == getHeight() && unitPixels == unit) return;
        unit = unitPixels;
        setWidth(width);
        setHeight(height);
        draw();
    }

    /** What the ladder says, for a screen reader. */
    static String spoken(Ladder ladder) {
        StringBuilder words = new StringBuilder("Ladder of limits.");
        ladder.nowShown().ifPresent(now -> words.append(String.format(Locale.ROOT, " Now %.1f.", now)));
        words.append(' ')
                .append(ladder.bandName())
                .append(' ')
                .append(ladder.bandDetail())
                .append('.');
        for (Limit limit : ladder.limits()) {
            words.append(String.format(Locale.ROOT, " %s at %.1f", limit.name(), limit.atShown()));
            if (!limit.detail().isEmpty()) words.append(", ").append(limit.detail());
            words.append('.');
        }
        return words.toString();
    }

    private void draw() {
        GraphicsContext ink = getGraphicsContext2D();
        ink.clearRect(0, 0, getWidth(), getHeight());
        if (getHeight() > 0) shown.ifPresent(ladder -> new Drawing(ink, ladder).all());
    }

    /** One drawing of one ladder at one size. */
    private final class Drawing {
        private final GraphicsContext ink;
        private final Brush brush;
        private final Ladder ladder;
        private final double top;
        private final double bottom;

        Drawing(GraphicsContext ink, Ladder ladder) {
            this.ink = ink;
            this.ladder = ladder;
            brush = new Brush(ink, unit);
            top = brush.px(14);
            bottom = getHeight() - brush.px(14);
        }

        double y(double shown) {
            double share = (shown - ladder.bottomShown()) / (ladder.topShown() - ladder.bottomShown());
            return bottom - Math.max(0, Math.min(1, share)) * (bottom - top);
        }

        void all() {
            range();
            rungs();
            limits();
            names();
            peak();
            ladder.nowShown().ifPresent(this::now);
        }

        void range() {
            double high = y(ladder.bandHighShown());
            double width = brush.px(RIGHT_WALL - LEFT_WALL);
            double height = y(ladder.bandLowShown()) - high;
            brush.box(brush.px(LEFT_WALL), high, width, height, palette.panel());
            brush.hatch(brush.px(LEFT_WALL), high, width, height, palette.hatch());
        }

        void rungs() {
            for (double wall : new double[] {LEFT_WALL, RIGHT_WALL})
                brush.line(brush.px(wall), top, brush.px(wall), bottom, palette.ink(), 3);
            double step = ladder.stepShown();
            for (double rung = Math.ceil(ladder.bottomShown() / step) * step;
                    rung <= ladder.topShown() + 1e-9;
                    rung += step) {
                double y = y(rung);
                brush.line(brush.px(LEFT_WALL - 10), y, brush.px(LEFT_WALL), y, palette.quiet(), 2);
                String figure = String.format(Locale.ROOT, step < 1 ? "%.1f" : "%.0f", rung);
                brush.words(
                        figure,
                        brush.px(44),
                        y,
                        TextAlignment.RIGHT,
                        Typeface.REGULAR,
                        step < 1 ? 20 : 26,
                        palette.quiet());
            }
        }

        void limits() {
            for (Limit limit : ladder.limits()) {
                if (limit.atShown() > ladder.topShown() || limit.atShown() < ladder.bottomShown()) continue;
                double y = y(limit.atShown());
                double units = limit.weight() == Limit.Weight.STRONG ? 6 : 3;
                brush.line(brush.px(LEFT_WALL - 6), y, brush.px(RIGHT_WALL + 6), y, palette.limit(), units);
            }
        }

        void names() {
            List<Name> names = new ArrayList<>();
            for (Limit limit : ladder.limits()) names.add(new Name(limit.name(), limit.detail(), y(limit.atShown())));
            if (!ladder.bandName().isEmpty()) {
                double middle = (y(ladder.bandLowShown()) + y(ladder.bandHighShown())) / 2;
                names.add(new Name(ladder.bandName(), ladder.bandDetail(), middle));
            }
            names.sort(Comparator.comparingDouble(Name::y));
            double[] wished = names.stream().mapToDouble(Name::y).toArray();
            double[] size = names.stream()
                    .mapToDouble(name -> brush.px(name.detail().isEmpty() ? 34 : 58))
                    .toArray();
            double[] placed = LabelStack.spread(wished, size, 0, getHeight());
            for (int i = 0; i < placed.length; i++) name(names.get(i), placed[i]);
        }

        void name(Name name, double middle) {
            double x = brush.px(NAMES);
            double room = getWidth() - x;
            boolean alone = name.detail().isEmpty();
            double nameUnits = brush.fitting(name.words(), Typeface.REGULAR, 28, room);
            double nameY = alone ? middle : middle - brush.px(14);
            brush.words(name.words(), x, nameY, TextAlignment.LEFT, Typeface.REGULAR, nameUnits, palette.ink());
            if (alone) return;
            double detailUnits = brush.fitting(name.detail(), Typeface.REGULAR, 22, room);
            brush.words(
                    name.detail(),
                    x,
                    middle + brush.px(15),
                    TextAlignment.LEFT,
                    Typeface.REGULAR,
                    detailUnits,
                    palette.quiet());
        }

        void peak() {
            if (ladder.peakShown().isEmpty()) return;
            double x = brush.px((LEFT_WALL + RIGHT_WALL) / 2);
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
        void now(double now) {
            double y = y(now);
            double tip = brush.px(LEFT_WALL - 4);
            double length = brush.px(60);
            double half = brush.px(17);
            if (now > ladder.topShown() || now < ladder.bottomShown()) {
                double out = now > ladder.topShown() ? -1 : 1;
                double foot = y - out * length / 2;
                pointer(new double[] {tip - half, tip - 2 * half, tip}, new double[] {y + out * brush.px(8), foot, foot
                });
            } else {
                pointer(new double[] {tip - length, tip, tip - length}, new double[] {y - half, y, y + half});
            }
        }

        void pointer(double[] x, double[] y) {
            ink.setFill(reading == Reading.GOOD ? palette.ink() : palette.base());
            ink.fillPolygon(x, y, 3);
            ink.setStroke(palette.ink());
            ink.setLineWidth(brush.px(reading == Reading.GOOD ? 1 : 4));
            ink.strokePolygon(x, y, 3);
        }
    }

    private record Name(String words, String detail, double y) {}
}
