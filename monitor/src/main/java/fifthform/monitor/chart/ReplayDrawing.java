package fifthform.monitor.chart;

import fifthform.curves.crystal.SeedWord;
import fifthform.monitor.replay.Happening;
import fifthform.monitor.replay.Happening.Row;
import fifthform.monitor.replay.ReplayChart;
import fifthform.monitor.replay.ReplayChart.Band;
import fifthform.monitor.replay.ReplayChart.CrystalStretch;
import fifthform.monitor.replay.ReplayChart.FanPoint;
import fifthform.monitor.replay.ReplayChart.Line;
import fifthform.monitor.replay.ReplayChart.Mark;
import fifthform.monitor.replay.ReplayChart.Stretch;
import fifthform.monitor.texts.ReplayText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** One drawing of a batch at a desk: phases, the curve on its panel, three thin rows, crystals, and the scale of times. */
final class ReplayDrawing {
    private static final double[] SOLID = {};

    /** Where it is seen. */
    enum Purpose {
        /** Words about the cursors stand beside it. */
        SCREEN,
        /** It has to say everything itself. */
        FILE
    }

    private final Pen pen;
    private final Purpose purpose;
    private final ReplayPlot plot;
    private final Palette palette;
    private final ReplayChart chart;
    private final double em;

    ReplayDrawing(Pen pen, ReplayPlot plot, Palette palette, ReplayChart chart, Purpose purpose) {
        this.pen = pen;
        this.purpose = purpose;
        this.plot = plot;
        this.palette = palette;
        this.chart = chart;
        this.em = plot.em();
    }

    void all() {
        pen.box(plot.left(), plot.top(), plot.width(), plot.panelHeight(), palette.panel());
        pen.within(plot.left(), plot.top(), plot.width(), plot.panelHeight());
        for (Band band : chart.bands()) band(band);
        for (Mark limit : chart.limits())
            pen.line(plot.left(), y(limit.at()), plot.right(), y(limit.at()), palette.limit(), em / 8);
        fan(chart.simulated());
        fan(chart.forecast());
        for (int i = 0; i < chart.laid().size(); i++) laid(chart.laid().get(i), i);
        curve(chart.measured(), palette.ink(), em / 5.5, SOLID);
        pen.free();
        bandWords();
        heights();
        phases();
        rows();
        crystals();
        losses();
        forecastWords();
        cursors();
        // After the cursors: a note is read, and one of those is only a line.
        notes();
        times();
    }

    private double x(double seconds) {
        double share = (seconds - chart.fromSeconds()) / (chart.toSeconds() - chart.fromSeconds());
        return plot.left() + share * plot.width();
    }

    private double y(double shown) {
        double share = (shown - chart.bottomShown()) / (chart.topShown() - chart.bottomShown());
        return plot.bottom() - share * plot.panelHeight();
    }

    private boolean isShown(double seconds) {
        return seconds >= chart.fromSeconds() && seconds <= chart.toSeconds();
    }

    private void words(String words, double x, double middle, TextAlignment align, Color color) {
        pen.words(words, x, middle, align, Typeface.REGULAR, em, color);
    }

    private double width(String words) {
        return pen.width(words, Typeface.REGULAR, em);
    }

    private void band(Band band) {
        double top = y(band.highShown());
        pen.hatch(plot.left(), top, plot.width(), y(band.lowShown()) - top, palette.hatch(), em * 0.8, em / 9);
    }

    /** Right-hand words of ranges and limits, none over another, each on plain ground. */
    private void bandWords() {
        List<Mark> marks = new ArrayList<>();
        for (Band band : chart.bands()) marks.add(new Mark((band.lowShown() + band.highShown()) / 2, band.words()));
        marks.addAll(chart.limits());
        marks.removeIf(m -> m.at() < chart.bottomShown() || m.at() > chart.topShown());
        marks.sort(Comparator.comparingDouble(m -> y(m.at())));
        double[] wished = marks.stream().mapToDouble(m -> y(m.at())).toArray();
        double[] size = marks.stream().mapToDouble(m -> em * 1.35).toArray();
        double[] placed = LabelStack.spread(wished, size, plot.top(), plot.bottom());
        for (int i = 0; i < placed.length; i++)
            words(marks.get(i).words(), plot.right() + em * 0.5, placed[i], TextAlignment.LEFT, palette.ink());
    }

    private void heights() {
        words(chart.unit(), plot.left() - em * 0.6, plot.top() - em * 0.85, TextAlignment.RIGHT, palette.ink());
        for (Mark mark : chart.heights()) {
            double y = y(mark.at());
            if (y < plot.top() + em * 0.4 || y > plot.bottom() - em * 0.4) continue;
            pen.line(plot.left() - em * 0.4, y, plot.left(), y, palette.ink(), 1);
            words(mark.words(), plot.left() - em * 0.6, y, TextAlignment.RIGHT, palette.ink());
        }
    }

    private void curve(Line line, Color color, double width, double[] dashes) {
        double[] xs = new double[line.seconds().length];
        double[] ys = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = x(line.seconds()[i]);
            ys[i] = y(line.shown()[i]);
        }
        pen.path(xs, ys, color, width, dashes);
    }

    /** Another batch: dotted, the next one in dots and strokes, and its name where it is last seen. */
    private void laid(Line line, int place) {
        double[] dashes = place == 0 ? new double[] {em / 6, em / 3} : new double[] {em * 0.7, em / 4, em / 6, em / 4};
        curve(line, palette.compared(), em / 5.5, dashes);
        for (int i = line.seconds().length - 1; i >= 0; i--) {
            if (Double.isNaN(line.seconds()[i]) || !isShown(line.seconds()[i])) continue;
            double end = Math.min(x(line.seconds()[i]), plot.right() - em * 0.5);
            double wide = width(line.words());
            boolean beyond = end + em * 0.7 + wide <= plot.right();
            double from = beyond ? end + em * 0.5 : end - wide;
            double wished = beyond
                    ? y(line.shown()[i]) + em * (place == 0 ? 0.7 : -0.7)
                    : clearOf(line, from - em * 0.2, end + em * 0.2, place == 0);
            double middle = Math.max(plot.top() + em, Math.min(plot.bottom() - em, wished));
            pen.box(from - em * 0.2, middle - em * 0.6, wide + em * 0.4, em * 1.2, palette.panel());
            words(line.words(), from, middle, TextAlignment.LEFT, palette.ink());
            return;
        }
    }

    /** Below or above all of a curve between two places: words over it would look like a gap in the readings. */
    private double clearOf(Line line, double fromX, double toX, boolean below) {
        double edge = below ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int i = 0; i < line.seconds().length; i++) {
            double x = x(line.seconds()[i]);
            if (!(x >= fromX && x <= toX) || Double.isNaN(line.shown()[i])) continue;
            edge = below ? Math.max(edge, y(line.shown()[i])) : Math.min(edge, y(line.shown()[i]));
        }
        return edge + em * (below ? 0.9 : -0.9);
    }

    private void fan(List<FanPoint> fan) {
        if (fan.size() < 2) return;
        int n = fan.size();
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        double[] middleX = new double[n];
        double[] middleY = new double[n];
        for (int i = 0; i < n; i++) {
            FanPoint point = fan.get(i);
            middleX[i] = x(point.seconds());
            middleY[i] = y(point.shown());
            xs[i] = middleX[i];
            ys[i] = y(point.highShown());
            xs[2 * n - 1 - i] = middleX[i];
            ys[2 * n - 1 - i] = y(point.lowShown());
        }
        Color color = palette.forecast();
        pen.shape(xs, ys, color.deriveColor(0, 1, 1, 0.25), color, 0);
        pen.path(middleX, middleY, color, em / 5.5, em * 0.7, em * 0.4);
    }

    /** What the fan is of stands under the end of its middle line, where the fan is wide enough to hold it. */
    private void forecastWords() {
        if (chart.forecast().size() < 2) return;
        double wide = width(chart.forecastWords());
        double begin = x(chart.forecast().get(0).seconds());
        double last = begin;
        double middle = Double.NaN;
        for (FanPoint point : chart.forecast()) {
            if (!isShown(point.seconds())) continue;
            last = x(point.seconds());
            middle = y(point.shown()) + em * 0.9;
        }
        if (last - begin < wide + em || middle > plot.bottom() - em || middle < plot.top() + em) return;
        words(chart.forecastWords(), last - em * 0.4, middle, TextAlignment.RIGHT, palette.ink());
    }

    private void phases() {
        double free = plot.left();
        for (Stretch phase : chart.phases()) {
            if (phase.toSeconds() < chart.fromSeconds() || phase.fromSeconds() > chart.toSeconds()) continue;
            double from = Math.max(plot.left(), x(phase.fromSeconds()));
            double to = Math.min(plot.right(), x(phase.toSeconds()));
            pen.line(from, plot.top() - em * 0.9, from, plot.top(), palette.ink(), 1);
            double at = Math.max(from + em * 0.35, free);
            double wide = width(phase.words());
            if (at + wide > to - em * 0.2 && to < plot.right()) continue;
            words(phase.words(), at, plot.top() - em * 0.85, TextAlignment.LEFT, palette.ink());
            free = at + wide + em * 0.4;
        }
    }

    private void rows() {
        MarkShapes marks = new MarkShapes(pen, palette, em * 0.95);
        row(Row.DID, ReplayText.ROW_DID);
        row(Row.TOLD, ReplayText.ROW_TOLD);
        row(Row.ALARM, ReplayText.ROW_ALARM);
        List<Happening> rows = chart.rows();
        for (Happening h : rows) stands(h);
        for (int i = 0; i < rows.size(); i++) {
            double at = rows.get(i).nanos() / 1e9;
            if (!isShown(at)) continue;
            double y = plot.row(rows.get(i).row().ordinal());
            marks.draw(rows.get(i).sign(), x(at), y);
            if (i == chart.chosen()) chosen(x(at), y);
        }
    }

    private void row(Row row, ReplayText name) {
        double y = plot.row(row.ordinal());
        pen.line(plot.left(), y, plot.right(), y, palette.hatch(), 1);
        words(name.say(), plot.left() - em, y, TextAlignment.RIGHT, palette.ink());
    }

    /** An alarm stood for a while: a bar behind its mark. */
    private void stands(Happening h) {
        if (h.stands().isEmpty()) return;
        double from = Math.max(plot.left(), x(h.nanos() / 1e9));
        double to = Math.min(plot.right(), x(h.stands().get() / 1e9));
        double y = plot.row(h.row().ordinal());
        if (to > from) pen.line(from, y, to, y, palette.ink(), em / 6);
    }

    private void chosen(double x, double y) {
        double r = em * 0.65;
        pen.path(
                new double[] {x - r, x + r, x + r, x - r, x - r},
                new double[] {y - r, y - r, y + r, y + r, y - r},
                palette.ink(),
                em / 7);
    }

    private void crystals() {
        double top = plot.strip();
        double high = plot.stripHeight();
        words(ReplayText.ROW_CRYSTALS.say(), plot.left() - em, top + high / 2, TextAlignment.RIGHT, palette.ink());
        pen.line(plot.left(), top + high / 2, plot.right(), top + high / 2, palette.hatch(), 1);
        for (CrystalStretch stretch : chart.crystals()) stretch(stretch, top, high);
    }

    /** As on Watch: filled is enough, hatched doubtful, open too few, barred thick. */
    private void stretch(CrystalStretch stretch, double top, double high) {
        double from = Math.max(plot.left(), x(stretch.fromSeconds()));
        double wide = Math.min(plot.right(), x(stretch.toSeconds())) - from;
        if (wide <= 0) return;
        boolean filled = stretch.word() == SeedWord.ENOUGH;
        Color ground = filled ? palette.quiet() : palette.panel();
        pen.box(from, top, wide, high, ground);
        if (stretch.word() == SeedWord.DOUBTFUL) pen.hatch(from, top, wide, high, palette.quiet(), em * 0.6, em / 9);
        Color bars = filled ? palette.panel() : palette.ink();
        if (stretch.thick())
            for (double x = from + em * 0.4; x < from + wide; x += em * 0.6)
                pen.line(x, top + em * 0.2, x, top + high - em * 0.2, bars, em / 8);
        pen.path(
                new double[] {from, from + wide, from + wide, from, from},
                new double[] {top, top, top + high, top + high, top},
                palette.quiet(),
                1);
        double needs = width(stretch.words()) + em;
        if (needs > wide) return;
        pen.box(from + (wide - needs) / 2, top + 1, needs, high - 2, ground);
        words(
                stretch.words(),
                from + wide / 2,
                top + high / 2,
                TextAlignment.CENTER,
                filled ? palette.panel() : palette.ink());
    }

    private void notes() {
        MarkShapes marks = new MarkShapes(pen, palette, em * 0.95);
        double free = plot.left();
        double y = plot.top() + em;
        for (Mark note : chart.notes()) {
            if (!isShown(note.at())) continue;
            double x = x(note.at());
            pen.line(x, plot.top(), x, plot.bottom(), palette.quiet(), 1, 2, 4);
            marks.note(Math.min(x, plot.right() - em * 0.6), y);
            String shown = note.words().length() > 28 ? note.words().substring(0, 27) + "…" : note.words();
            double wide = width(shown);
            double from = x + em * 0.8;
            if (shown.isBlank() || from < free || from + wide > plot.right()) continue;
            pen.box(from - em * 0.2, y - em * 0.6, wide + em * 0.4, em * 1.2, palette.panel());
            words(shown, from, y, TextAlignment.LEFT, palette.ink());
            free = from + wide + em;
        }
    }

    /** The moment when the seed was lost goes through curve and strip, its words at the top of the panel. */
    private void losses() {
        double free = Double.NEGATIVE_INFINITY;
        for (Mark loss : chart.losses()) {
            if (!isShown(loss.at())) continue;
            double x = x(loss.at());
            pen.line(x, plot.top(), x, plot.under(), palette.limit(), em / 6, em * 0.7, em * 0.4);
            double wide = width(loss.words());
            boolean right = x + em * 0.5 + wide <= plot.right();
            double from = right ? x + em * 0.5 : x - em * 0.5 - wide;
            if (from < free) continue;
            double middle = plot.top() + em * 0.9;
            pen.box(from - em * 0.2, middle - em * 0.65, wide + em * 0.4, em * 1.3, palette.panel());
            words(loss.words(), from, middle, TextAlignment.LEFT, palette.ink());
            free = from + wide + em;
        }
    }

    private void cursors() {
        cursor(chart.cursorA(), "A");
        cursor(chart.cursorB(), "B");
        if (isShown(chart.nowSeconds())) {
            double x = x(chart.nowSeconds());
            pen.line(x, plot.top(), x, plot.under(), palette.ink(), em / 7);
        }
        if (purpose == Purpose.SCREEN || chart.cursorWords().isEmpty()) return;
        double wide = width(chart.cursorWords());
        double middle = plot.bottom() - em * 0.9;
        double anchor = chart.cursorA().orElse(chart.cursorB().orElse(chart.nowSeconds()));
        double from =
                Math.max(plot.left() + em * 0.6, Math.min(plot.right() - wide - em * 0.6, x(anchor) - wide - em * 1.2));
        pen.box(from - em * 0.3, middle - em * 0.7, wide + em * 0.6, em * 1.4, palette.panel());
        words(chart.cursorWords(), from, middle, TextAlignment.LEFT, palette.ink());
    }

    private void cursor(OptionalDouble at, String name) {
        if (at.isEmpty() || !isShown(at.getAsDouble())) return;
        double x = x(at.getAsDouble());
        pen.line(x, plot.top(), x, plot.bottom(), palette.ink(), em / 9, em / 4, em / 4);
        double y = plot.bottom() - em * 0.9;
        pen.box(x - em * 0.5, y - em * 0.65, em, em * 1.3, palette.ink());
        pen.words(name, x, y, TextAlignment.CENTER, Typeface.BOLD, em, palette.panel());
    }

    private void times() {
        double y = plot.under() + em * 0.9;
        for (Mark mark : chart.times()) {
            double x = x(mark.at());
            double half = width(mark.words()) / 2;
            if (x - half < 0 || x + half > plot.whole()) continue;
            pen.line(x, plot.under(), x, plot.under() + em * 0.3, palette.ink(), 1);
            words(mark.words(), x, y, TextAlignment.CENTER, palette.ink());
        }
    }
}
