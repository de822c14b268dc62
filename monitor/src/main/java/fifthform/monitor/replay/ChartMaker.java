package fifthform.monitor.replay;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.SeedJudged;
import fifthform.curves.engine.State;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Phase;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.replay.ReplayChart.Band;
import fifthform.monitor.replay.ReplayChart.CrystalStretch;
import fifthform.monitor.replay.ReplayChart.FanPoint;
import fifthform.monitor.replay.ReplayChart.Line;
import fifthform.monitor.replay.ReplayChart.Mark;
import fifthform.monitor.replay.ReplayChart.Stretch;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.ReplayText;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The parts of the chart that come from one recording. What does not change is made once. */
final class ChartMaker {
    private static final double NANOS = 1e9;
    private static final Duration FAN_STEP = Duration.ofSeconds(10);

    /** Distances of marks on the scale of times, s. */
    private static final long[] STEPS = {
        1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 2 * 3600, 4 * 3600, 6 * 3600
    };

    private static final int MOST_MARKS = 12;

    private final Recording recording;
    private final Units units;
    private final Recipe recipe;
    private final List<Stretch> phases;
    private final List<CrystalStretch> crystals;
    private final List<Mark> losses;
    private final List<Band> bands;
    private final List<Mark> limits;

    ChartMaker(Recording recording, Units units) {
        this.recording = recording;
        this.units = units;
        this.recipe = recording.setup().recipe();
        phases = makePhases();
        crystals = makeCrystals();
        losses = makeLosses();
        bands = List.of(
                band(ReplayText.BAND_MELT, recipe.melt().range()),
                band(ReplayText.BAND_COOL, recipe.cool().range()),
                band(ReplayText.BAND_WORK, recipe.work().range()));
        limits = List.of(new Mark(
                units.shown(recipe.meltOut().limitCelsius()),
                ReplayText.LIMIT_MELT_OUT.say(units.plain(recipe.meltOut().limitCelsius()))));
    }

    List<Stretch> phases() {
        return phases;
    }

    List<CrystalStretch> crystals() {
        return crystals;
    }

    List<Mark> losses() {
        return losses;
    }

    List<Band> bands() {
        return bands;
    }

    List<Mark> limits() {
        return limits;
    }

    private Band band(ReplayText word, CelsiusRange range) {
        return new Band(
                units.shown(range.lowCelsius()),
                units.shown(range.highCelsius()),
                word.say(units.plain(range.lowCelsius()), units.plain(range.highCelsius())));
    }

    /** The whole batch, and all that it may not pass, with a little room. */
    double[] wholeScale() {
        double[] read = recording.bowl().range(0, Long.MAX_VALUE);
        double low = recipe.cool().range().lowCelsius();
        double high = recipe.meltOut().limitCelsius();
        return scale(
                Double.isNaN(read[0]) ? low : Math.min(low, read[0]),
                Double.isNaN(read[1]) ? high : Math.max(high, read[1]));
    }

    /** What was read, °C, with a little room. */
    double[] scaleOf(double[] read) {
        return Double.isNaN(read[0]) ? wholeScale() : scale(read[0], read[1]);
    }

    private double[] scale(double lowCelsius, double highCelsius) {
        double room = Math.max(0.2, (highCelsius - lowCelsius) / 25);
        return new double[] {units.shown(lowCelsius - room), units.shown(highCelsius + room)};
    }

    /** The curve of a recording in the maker's unit, its times moved by {@code shift} ns. */
    Line line(Recording of, Span span, int columns, long shift, String words) {
        Readings.Curve curve = of.bowl().curve(span.from() - shift, span.to() - shift, columns);
        double[] seconds = new double[curve.seconds().length];
        double[] shown = new double[seconds.length];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = curve.seconds()[i] + shift / NANOS;
            shown[i] = units.shown(curve.celsius()[i]);
        }
        return new Line(seconds, shown, words);
    }

    private List<Stretch> makePhases() {
        List<Stretch> made = new ArrayList<>();
        Phase phase = Phase.MELT;
        double from = 0;
        for (Recording.Told told : recording.told()) {
            if (!(told.event() instanceof Event.PhaseChanged changed)) continue;
            double at = recording.nanos(changed.at()) / NANOS;
            made.add(new Stretch(from, at, InWords.of(phase)));
            phase = changed.to();
            from = at;
        }
        made.add(new Stretch(from, recording.endNanos() / NANOS, InWords.of(phase)));
        return made;
    }

    private List<Mark> makeLosses() {
        List<Mark> made = new ArrayList<>();
        for (Recording.Told told : recording.told()) {
            if (!(told.event() instanceof Event.SeedLost lost)) continue;
            String words = ReplayText.FINDING_SEED_LOST.say(units.withUnit(lost.highestCelsius()));
            made.add(new Mark(recording.nanos(lost.at()) / NANOS, words));
        }
        return made;
    }

    private List<CrystalStretch> makeCrystals() {
        List<CrystalStretch> made = new ArrayList<>();
        Optional<SeedJudged> word = Optional.empty();
        for (Recording.Told told : recording.told()) {
            boolean melting = told.event() instanceof Event.PhaseChanged changed && changed.to() == Phase.MELT;
            boolean another = told.event() instanceof SeedJudged;
            if (!melting && !another) continue;
            Instant at = told.event().at();
            word.ifPresent(w -> made.add(stretch(w, at)));
            word = told.event() instanceof SeedJudged judged ? Optional.of(judged) : Optional.empty();
        }
        word.ifPresent(w -> made.add(stretch(w, recording.at(recording.endNanos()))));
        return made;
    }

    private CrystalStretch stretch(SeedJudged judged, Instant until) {
        return new CrystalStretch(
                recording.nanos(judged.at()) / NANOS,
                recording.nanos(until) / NANOS,
                judged.word(),
                judged.thick(),
                Happenings.crystals(judged));
    }

    /** Where it was going, as it is computed now. */
    List<FanPoint> fan(Optional<State> state) {
        if (state.isEmpty() || state.get().forecast().isEmpty()) return List.of();
        Forecast forecast = state.get().forecast().get();
        double made = recording.nanos(forecast.madeAt()) / NANOS;
        List<FanPoint> fan = new ArrayList<>();
        for (Duration d = Duration.ZERO; d.compareTo(Forecast.HORIZON) <= 0; d = d.plus(FAN_STEP)) {
            Outlook o = forecast.at(d);
            fan.add(point(made + d.toSeconds(), o.celsius(), o.lowerCelsius(), o.upperCelsius()));
        }
        return fan;
    }

    /** What is forecast: a bowl on the heat is not told apart from a lifted one by its curve. */
    static String fanWords(Optional<State> state) {
        if (state.isEmpty()) return "";
        boolean onTable = state.get().batch().contact().place() == Place.TABLE;
        return (onTable ? ReplayText.FORECAST_FAN : ReplayText.FORECAST_FAN_LEFT).say();
    }

    List<FanPoint> fan(WhatIf whatIf) {
        return whatIf.course().stream()
                .map(p -> point(p.at().toNanos() / NANOS, p.celsius(), p.lowerCelsius(), p.upperCelsius()))
                .toList();
    }

    private FanPoint point(double seconds, double celsius, double lower, double upper) {
        return new FanPoint(seconds, units.shown(celsius), units.shown(lower), units.shown(upper));
    }

    /** Marks of the scale of temperatures, whole degrees where that is close enough. */
    List<Mark> heights(double bottom, double top) {
        double step = 0.1;
        for (double wish : new double[] {0.1, 0.2, 0.5, 1, 2, 5, 10, 20}) {
            step = wish;
            if ((top - bottom) / wish <= 7) break;
        }
        List<Mark> marks = new ArrayList<>();
        String pattern = step < 1 ? "%.1f" : "%.0f";
        for (double at = Math.ceil(bottom / step) * step; at <= top; at += step)
            marks.add(new Mark(at, Units.format(pattern, at)));
        return marks;
    }

    /** Marks of the scale of times, since the session's start. */
    static List<Mark> times(Span span) {
        double seconds = span.length() / NANOS;
        long step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && seconds / STEPS[i] <= MOST_MARKS; i--) step = STEPS[i];
        List<Mark> marks = new ArrayList<>();
        for (long at = (long) Math.ceil(span.from() / NANOS / step) * step; at <= span.to() / NANOS; at += step)
            marks.add(new Mark(at, Clock.elapsed(at * (long) NANOS)));
        return marks;
    }
}
