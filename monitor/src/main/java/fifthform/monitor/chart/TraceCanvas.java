package fifthform.monitor.chart;

import fifthform.monitor.model.WatchPicture.Flag;
import fifthform.monitor.model.WatchPicture.Stretch;
import fifthform.monitor.model.WatchPicture.Trace;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.ChartText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;

/** The measured curve with its forecast fan. Redraws only when what it shows has changed. */
public final class TraceCanvas extends Canvas {
    private Optional<Trace> shown = Optional.empty();
    private Palette palette = Palette.BRIGHT;
    private double unit = 1;
    private List<Written> written = List.of();

    public TraceCanvas() {
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    /** Shows {@code trace}; nothing happens where it is what is shown already. */
    public void show(Trace trace) {
        if (shown.filter(trace::equals).isPresent()) return;
        shown = Optional.of(trace);
        setAccessibleText(spoken(trace));
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

    /** What stands on it and where. */
    public List<Written> written() {
        return written;
    }

    /** What the curve says, for a screen reader. */
    static String spoken(Trace trace) {
        if (trace.points().isEmpty()) return ChartText.CURVE_NO_READINGS_YET.say();
        double first = trace.points().get(0).shown();
        double last = trace.points().get(trace.points().size() - 1).shown();
        String forecast = trace.fan().isEmpty()
                ? ChartText.NO_FORECAST.say()
                : ChartText.FORECAST_ENDS_AT.say(Units.format(
                        "%.1f", trace.fan().get(trace.fan().size() - 1).shown()));
        String crystals = trace.crystals().isEmpty()
                ? ""
                : ChartText.CRYSTALS.say(trace.crystals().stream()
                        .map(Stretch::words)
                        .collect(Collectors.joining(ChartText.THEN.say())));
        String lost = trace.flags().stream()
                .filter(flag -> flag.weight() == Flag.Weight.THROUGH)
                .map(flag -> ChartText.MARKED.say(flag.word()))
                .collect(Collectors.joining());
        String past = trace.past().map(words -> words + ": ").orElse("");
        return past
                + ChartText.CURVE_FROM_TO.say(
                        Units.format("%.1f", first), Units.format("%.1f", last), forecast, crystals, lost);
    }

    private void draw() {
        GraphicsContext ink = getGraphicsContext2D();
        ink.clearRect(0, 0, getWidth(), getHeight());
        if (getHeight() <= 0) return;
        Brush brush = new Brush(ink, unit);
        shown.ifPresent(trace -> new TraceDrawing(ink, brush, palette, trace, getWidth(), getHeight()).all());
        written = brush.written();
    }
}
