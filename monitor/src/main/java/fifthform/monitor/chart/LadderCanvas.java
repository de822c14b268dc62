package fifthform.monitor.chart;

import fifthform.monitor.model.WatchPicture.Ladder;
import fifthform.monitor.model.WatchPicture.Limit;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.ChartText;
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
        StringBuilder words = new StringBuilder(ChartText.LADDER_OF_LIMITS.say());
        ladder.nowShown().ifPresent(now -> words.append(ChartText.LADDER_NOW.say(Units.format("%.1f", now))));
        words.append(' ')
                .append(ladder.bandName())
                .append(' ')
                .append(ladder.bandDetail())
                .append('.');
        for (Limit limit : ladder.limits()) {
            words.append(ChartText.LADDER_LIMIT.say(limit.name(), Units.format("%.1f", limit.atShown())));
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
        private final Brush brush;
        private final Ladder ladder;
        private final Rails rails;

        Drawing(GraphicsContext ink, Ladder ladder) {
            this.ladder = ladder;
            brush = new Brush(ink, unit);
            rails = new Rails(ink, brush, ladder, palette, LEFT_WALL, RIGHT_WALL, getHeight());
        }

        double y(double shown) {
            return rails.y(shown);
        }

        void all() {
            rails.range();
            rungs();
            rails.limits();
            names();
            rails.peak();
            rails.now(reading);
        }

        void rungs() {
            rails.walls();
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
                    palette.ink());
        }
    }

    private record Name(String words, String detail, double y) {}
}
