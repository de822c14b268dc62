package fifthform.monitor.chart;

import fifthform.curves.crystal.SeedWord;
import fifthform.monitor.model.WatchPicture.Crystals;
import fifthform.monitor.model.WatchPicture.FanPoint;
import fifthform.monitor.model.WatchPicture.Flag;
import fifthform.monitor.model.WatchPicture.Gap;
import fifthform.monitor.model.WatchPicture.Point;
import fifthform.monitor.model.WatchPicture.Stretch;
import fifthform.monitor.model.WatchPicture.Trace;
import fifthform.monitor.texts.ChartText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;

/** One drawing of one trace at one size: flags above, scale at both ends, the curve on a panel. */
final class TraceDrawing {
    private static final double FLAG_UNITS = 22;
    private static final double SCALE_UNITS = 20;

    /** Height of the strip of crystals, and its distance from the panel. */
    private static final double STRIP_UNITS = 26;

    private static final double STRIP_GAP = 4;

    private static final double STRIP_WORDS = 18;

    private static final double PAST_UNITS = 26;

    /** Room for the figures beside the curve: theirs at the usual size, and what parts them from panel edge and curve. */
    private static final double SCALE_ROOM = 92;

    private static final double SCALE_GAPS = 28;

    private final GraphicsContext ink;
    private final Brush brush;
    private final Palette palette;
    private final Trace trace;
    private final double width;
    private final double panelTop;
    private final double panelBottom;
    private final double left;
    private final double right;

    TraceDrawing(GraphicsContext ink, Brush brush, Palette palette, Trace trace, double width, double height) {
        this.ink = ink;
        this.brush = brush;
        this.palette = palette;
        this.trace = trace;
        this.width = width;
        panelTop = brush.px(30);
        panelBottom = height - (trace.crystals().isEmpty() ? 0 : brush.px(STRIP_UNITS + STRIP_GAP));
        String range = Figures.range(trace.bandLowShown(), trace.bandHighShown());
        double widest = Typeface.REGULAR.width(range, brush.px(SCALE_UNITS));
        left = Math.max(brush.px(SCALE_ROOM), widest + brush.px(SCALE_GAPS));
        right = width - left;
    }

    void all() {
        brush.box(0, panelTop, width, panelBottom - panelTop, palette.panel());
        range();
        trace.gaps().forEach(this::gap);
        trace.limitShown().ifPresent(limit -> brush.line(left, y(limit), right, y(limit), palette.limit(), 3));
        fan();
        curve();
        flags();
        scale();
        crystals();
        if (trace.past().isPresent()) pastFrame();
    }

    /** The range aimed for: the hatch alone is too faint to be found from the stove, so both ends have a line. */
    private void range() {
        if (bandHeight() <= 0) return;
        double high = y(trace.bandHighShown());
        brush.hatch(left, high, right - left, bandHeight(), palette.hatch());
        for (double end : new double[] {high, high + bandHeight()})
            brush.line(left, end, right, end, palette.quiet(), 2);
    }

    /** A frame of dashes, whole within the panel: nobody may take it for now. */
    private void pastFrame() {
        double inset = brush.px(2);
        ink.save();
        ink.setLineDashes(brush.px(14), brush.px(8));
        ink.setLineCap(StrokeLineCap.BUTT);
        ink.setStroke(palette.ink());
        ink.setLineWidth(2 * inset);
        ink.strokeRect(inset, panelTop + inset, width - 2 * inset, panelBottom - panelTop - 2 * inset);
        ink.restore();
    }

    private double bandHeight() {
        return Math.max(0, y(trace.bandLowShown()) - y(trace.bandHighShown()));
    }

    private double x(Instant at) {
        double span = Duration.between(trace.from(), trace.to()).toMillis();
        double share = span <= 0 ? 0 : Duration.between(trace.from(), at).toMillis() / span;
        return left + Math.max(0, Math.min(1, share)) * (right - left);
    }

    private double y(double shown) {
        return level(Math.max(trace.bottomShown(), Math.min(trace.topShown(), shown)));
    }

    /** Where a temperature stands even if that is off the panel. */
    private double level(double shown) {
        double share = (shown - trace.bottomShown()) / (trace.topShown() - trace.bottomShown());
        double margin = brush.px(8);
        return panelBottom - margin - share * (panelBottom - panelTop - 2 * margin);
    }

    /** No readings: an empty stretch between two dotted edges, never a line drawn across. */
    private void gap(Gap gap) {
        double from = x(gap.from());
        double to = Math.max(x(gap.to()), from + brush.px(3));
        ink.save();
        ink.setLineDashes(brush.px(3), brush.px(6));
        brush.line(from, panelTop, from, panelBottom, palette.quiet(), 2);
        brush.line(to, panelTop, to, panelBottom, palette.quiet(), 2);
        ink.restore();
        String word = ChartText.NO_READING.say();
        if (to - from > Typeface.REGULAR.width(word, brush.px(SCALE_UNITS)) + brush.px(12)) {
            brush.words(
                    word,
                    (from + to) / 2,
                    panelBottom - brush.px(18),
                    TextAlignment.CENTER,
                    Typeface.REGULAR,
                    SCALE_UNITS,
                    palette.quiet());
        }
    }

    /** Cut off where it leaves the panel: bent along its edge, it would seem to level off. */
    private void fan() {
        List<FanPoint> fan = trace.fan();
        if (fan.isEmpty()) return;
        int n = fan.size();
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xs[i] = x(fan.get(i).at());
            ys[i] = level(fan.get(i).highShown());
            xs[2 * n - 1 - i] = xs[i];
            ys[2 * n - 1 - i] = level(fan.get(i).lowShown());
        }
        Color forecast = palette.forecast();
        ink.save();
        ink.beginPath();
        ink.rect(left, panelTop, right - left, panelBottom - panelTop);
        ink.clip();
        ink.setFill(Color.color(forecast.getRed(), forecast.getGreen(), forecast.getBlue(), 0.25));
        ink.fillPolygon(xs, ys, 2 * n);
        pen(forecast, 4);
        ink.setLineCap(StrokeLineCap.BUTT);
        ink.setLineDashes(brush.px(12), brush.px(8));
        ink.beginPath();
        ink.moveTo(x(fan.get(0).at()), level(fan.get(0).shown()));
        for (FanPoint point : fan) ink.lineTo(x(point.at()), level(point.shown()));
        ink.stroke();
        ink.restore();
    }

    /** At most one lowest and one highest point a pixel column, so that an hour at 10 Hz draws as fast as a minute. */
    private void curve() {
        pen(palette.ink(), 4);
        ink.beginPath();
        int column = Integer.MIN_VALUE;
        double lowest = 0;
        double highest = 0;
        Instant before = Instant.MIN;
        for (Point point : trace.points()) {
            double x = x(point.at());
            double y = y(point.shown());
            boolean broken = before == Instant.MIN || crossesGap(before, point.at());
            int here = (int) Math.floor(x);
            if (broken) ink.moveTo(x, y);
            if (broken || here != column || y < lowest || y > highest) ink.lineTo(x, y);
            lowest = here != column || broken ? y : Math.min(lowest, y);
            highest = here != column || broken ? y : Math.max(highest, y);
            column = here;
            before = point.at();
        }
        ink.stroke();
    }

    private boolean crossesGap(Instant from, Instant to) {
        for (Gap gap : trace.gaps()) if (!from.isAfter(gap.from()) && !to.isBefore(gap.to())) return true;
        return false;
    }

    private void pen(Color color, double units) {
        ink.setStroke(color);
        ink.setLineWidth(brush.px(units));
        ink.setLineCap(StrokeLineCap.ROUND);
        ink.setLineJoin(StrokeLineJoin.ROUND);
    }

    /** Now first, then the newest flags; a word that would cover another leaves only its tick. */
    private void flags() {
        double now = x(trace.now());
        boolean past = trace.past().isPresent();
        if (!past) brush.line(now, panelTop, now, panelBottom, palette.quiet(), 2);
        List<double[]> taken = new ArrayList<>();
        trace.past().ifPresent(words -> past(words, taken));
        // What is marked through the curve has its word before all others: it is why somebody looks there.
        for (Flag flag : trace.flags())
            if (flag.weight() == Flag.Weight.THROUGH && isShown(flag)) word(flag.word(), x(flag.at()), taken);
        if (!past) word(ChartText.NOW.say(), now, taken);
        List<Flag> newestFirst = new ArrayList<>(trace.flags());
        newestFirst.sort(Comparator.comparing(Flag::at).reversed());
        for (Flag flag : newestFirst) {
            if (!isShown(flag)) continue;
            double x = x(flag.at());
            tick(flag, x);
            if (flag.weight() == Flag.Weight.TICK) word(flag.word(), x, taken);
        }
    }

    /** That it shows what was, above the panel where else “now” stands: over the curve it would hide what is asked for. */
    private void past(String words, List<double[]> taken) {
        double wide = Typeface.BOLD.width(words, brush.px(PAST_UNITS));
        taken.add(new double[] {width - wide, width});
        brush.words(words, width, brush.px(14), TextAlignment.RIGHT, Typeface.BOLD, PAST_UNITS, palette.ink());
    }

    private boolean isShown(Flag flag) {
        return !flag.at().isBefore(trace.from()) && !flag.at().isAfter(trace.to());
    }

    private void tick(Flag flag, double x) {
        if (flag.weight() == Flag.Weight.TICK) {
            brush.line(x, panelTop, x, panelTop + brush.px(12), palette.quiet(), 2);
            return;
        }
        ink.save();
        ink.setLineDashes(brush.px(8), brush.px(5));
        brush.line(x, panelTop, x, panelBottom, palette.ink(), 3);
        ink.restore();
    }

    /** What was said of the crystals, under the curve on the same time: pattern, grey and word say the same. */
    private void crystals() {
        if (trace.crystals().isEmpty()) return;
        double top = panelBottom + brush.px(STRIP_GAP);
        double high = brush.px(STRIP_UNITS);
        double units = brush.fitting(Crystals.LABEL.say(), Typeface.REGULAR, STRIP_WORDS, left - brush.px(10));
        brush.words(
                Crystals.LABEL.say(),
                left - brush.px(8),
                top + high / 2,
                TextAlignment.RIGHT,
                Typeface.REGULAR,
                units,
                palette.ink());
        for (Stretch stretch : trace.crystals()) stretch(stretch, top, high);
    }

    private void stretch(Stretch stretch, double top, double high) {
        double from = x(stretch.from());
        double wide = Math.max(brush.px(2), x(stretch.to()) - from);
        boolean filled = stretch.word() == SeedWord.ENOUGH;
        brush.box(from, top, wide, high, filled ? palette.quiet() : palette.panel());
        if (stretch.word() == SeedWord.DOUBTFUL) brush.hatch(from, top, wide, high, palette.quiet());
        if (stretch.thick()) bars(from, top, wide, high, filled ? palette.panel() : palette.ink());
        edge(from, top, wide, high);
        String words = stretch.words();
        double size = brush.px(STRIP_WORDS);
        double needs = Typeface.BOLD.width(words, size) + brush.px(16);
        if (needs > wide) return;
        // The word stands on plain ground, or strokes would run through its letters.
        Color ground = filled ? palette.quiet() : palette.panel();
        brush.box(from + (wide - needs) / 2, top + brush.px(1), needs, high - brush.px(2), ground);
        brush.words(
                words,
                from + wide / 2,
                top + high / 2,
                TextAlignment.CENTER,
                Typeface.BOLD,
                STRIP_WORDS,
                filled ? palette.panel() : palette.ink());
    }

    private void edge(double from, double top, double wide, double high) {
        double bottom = top + high;
        brush.line(from, top, from + wide, top, palette.quiet(), 2);
        brush.line(from, bottom, from + wide, bottom, palette.quiet(), 2);
        brush.line(from, top, from, bottom, palette.quiet(), 2);
        brush.line(from + wide, top, from + wide, bottom, palette.quiet(), 2);
    }

    /** Upright bars: thick. */
    private void bars(double from, double top, double wide, double high, Color color) {
        for (double x = from + brush.px(8); x < from + wide; x += brush.px(12))
            brush.line(x, top + brush.px(4), x, top + high - brush.px(4), color, 3);
    }

    private void word(String word, double x, List<double[]> taken) {
        double wide = Typeface.REGULAR.width(word, brush.px(FLAG_UNITS));
        double from = Math.max(0, Math.min(width - wide, x - wide / 2));
        double space = brush.px(14);
        for (double[] other : taken) if (from < other[1] + space && from + wide + space > other[0]) return;
        taken.add(new double[] {from, from + wide});
        brush.words(word, from, brush.px(14), TextAlignment.LEFT, Typeface.REGULAR, FLAG_UNITS, palette.ink());
    }

    /** Labels at both ends: a limit must be read without following its line across the screen. */
    private void scale() {
        List<Tag> tags = new ArrayList<>();
        trace.limitShown().ifPresent(limit -> tags.add(new Tag(Figures.of(limit), y(limit))));
        if (bandHeight() > 0)
            tags.add(new Tag(
                    Figures.range(trace.bandLowShown(), trace.bandHighShown()),
                    (y(trace.bandLowShown()) + y(trace.bandHighShown())) / 2));
        extreme(trace.points().stream().mapToDouble(Point::shown).min(), tags);
        extreme(trace.points().stream().mapToDouble(Point::shown).max(), tags);
        // From the most to the least needed: what has no room would run out of the panel, or push the others off their
        // lines.
        double pitch = brush.px(24);
        while (tags.size() > 1 && tags.size() * pitch > panelBottom - panelTop) tags.remove(tags.size() - 1);
        tags.sort(Comparator.comparingDouble(Tag::y));
        double[] wished = tags.stream().mapToDouble(Tag::y).toArray();
        double[] size = tags.stream().mapToDouble(tag -> pitch).toArray();
        double frame = trace.past().isPresent() ? brush.px(4) : 0;
        double[] placed = LabelStack.spread(wished, size, panelTop + frame, panelBottom - frame);
        for (int i = 0; i < placed.length; i++) {
            tag(tags.get(i).words(), left - brush.px(8), placed[i], TextAlignment.RIGHT);
            tag(tags.get(i).words(), right + brush.px(8), placed[i], TextAlignment.LEFT);
        }
    }

    private void tag(String words, double x, double y, TextAlignment align) {
        brush.words(words, x, y, align, Typeface.REGULAR, SCALE_UNITS, palette.quiet());
    }

    /** The lowest and highest reading get a figure where there is room; a limit's figure is never moved for it. */
    private void extreme(OptionalDouble shown, List<Tag> tags) {
        if (shown.isEmpty()) return;
        double at = y(shown.getAsDouble());
        if (tags.stream().anyMatch(tag -> Math.abs(tag.y() - at) < brush.px(26))) return;
        tags.add(new Tag(Figures.of(shown.getAsDouble()), at));
    }

    private record Tag(String words, double y) {}
}
