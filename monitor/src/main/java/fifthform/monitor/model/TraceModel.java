package fifthform.monitor.model;

import fifthform.curves.engine.State;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import fifthform.monitor.model.WatchPicture.FanPoint;
import fifthform.monitor.model.WatchPicture.Flag;
import fifthform.monitor.model.WatchPicture.Gap;
import fifthform.monitor.model.WatchPicture.Point;
import fifthform.monitor.model.WatchPicture.Stretch;
import fifthform.monitor.model.WatchPicture.Trace;
import fifthform.monitor.session.TraceView;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.LiveText;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The last ten minutes and the next two. */
final class TraceModel {
    private static final Duration BACK = Duration.ofMinutes(10);
    private static final Duration AHEAD = Duration.ofMinutes(2);
    private static final Duration FAN_STEP = Duration.ofSeconds(10);

    /** More points than the widest screen has columns would only cost time. */
    private static final int MOST_POINTS = 1500;

    private final Recipe recipe;
    private final State state;
    private final TraceView view;
    private final Units units;
    private final ZoneId zone;
    private final Duration back;

    TraceModel(Recipe recipe, State state, TraceView view, Look look) {
        this.recipe = recipe;
        this.state = state;
        this.view = view;
        this.units = look.units();
        this.zone = look.zone();
        this.back = look.back().by();
    }

    Trace trace() {
        Instant now = state.at();
        Instant shown = now.minus(back);
        Instant from = shown.minus(BACK);
        Instant to = shown.plus(AHEAD);
        boolean past = !back.isZero();
        List<Point> points = points(from, past ? to : Instant.MAX);
        List<FanPoint> fan = past ? List.of() : fan(now);
        CelsiusRange band = LadderModel.band(recipe, state);
        double low = units.shown(band.lowCelsius());
        double high = units.shown(band.highCelsius());
        OptionalDouble limit = limit();
        // What is to come counts with what was: a forecast that ran along the panel's edge would seem to level off
        // there.
        double[] curve = DoubleStream.concat(
                        points.stream().mapToDouble(Point::shown), fan.stream().mapToDouble(FanPoint::shown))
                .toArray();
        double bottom = DoubleStream.of(curve).min().orElse(low);
        double top = DoubleStream.of(curve).max().orElse(high);
        double margin = units.shownDifference(0.6);
        return new Trace(
                from,
                now,
                to,
                Math.floor(Math.min(bottom, low) - margin),
                Math.ceil(Math.max(Math.max(top, high), limit.orElse(high)) + margin),
                low,
                high,
                limit,
                points,
                fan,
                flags(from, to),
                gaps(from).stream().filter(g -> g.from().isBefore(to)).toList(),
                crystals(from, to.isBefore(now) ? to : now),
                past ? Optional.of(LiveText.LOOKING_BACK.say(Spans.words(back))) : Optional.empty());
    }

    private OptionalDouble limit() {
        return switch (Ahead.aimedFor(state)) {
            case REWARM, WORK, REST ->
                OptionalDouble.of(units.shown(recipe.meltOut().limitCelsius()));
            case MELT -> OptionalDouble.of(units.shown(recipe.scorchCelsius()));
            case COOL, SEED -> OptionalDouble.empty();
        };
    }

    private List<Point> points(Instant from, Instant to) {
        List<Point> all = new ArrayList<>();
        view.since(from, (at, celsius) -> {
            if (!at.isAfter(to)) all.add(new Point(at, units.shown(celsius)));
        });
        if (all.size() <= MOST_POINTS) return all;
        List<Point> some = new ArrayList<>();
        int every = (all.size() + MOST_POINTS - 1) / MOST_POINTS;
        for (int i = 0; i < all.size(); i += every) some.add(all.get(i));
        some.add(all.get(all.size() - 1));
        return some;
    }

    private List<FanPoint> fan(Instant now) {
        Optional<Forecast> course = Ahead.course(state);
        if (course.isEmpty()) return List.of();
        Forecast forecast = course.get();
        List<FanPoint> fan = new ArrayList<>();
        Duration since = Duration.between(forecast.madeAt(), now);
        for (Duration d = Duration.ZERO; d.compareTo(AHEAD) <= 0; d = d.plus(FAN_STEP)) {
            Duration ahead = d.plus(since);
            if (ahead.isNegative() || ahead.compareTo(Forecast.HORIZON) > 0) continue;
            Outlook o = forecast.at(ahead);
            fan.add(new FanPoint(
                    now.plus(d),
                    units.shown(o.celsius()),
                    units.shown(o.lowerCelsius()),
                    units.shown(o.upperCelsius())));
        }
        return fan;
    }

    private List<Flag> flags(Instant from, Instant to) {
        Stream<Flag> happened = view.flags().stream().map(f -> new Flag(f.at(), f.word()));
        Stream<Flag> lost = view.losses().stream()
                .map(l -> new Flag(l.at(), SurvivedWords.flag(l, units, zone), Flag.Weight.THROUGH));
        return Stream.concat(happened, lost)
                .filter(f -> !f.at().isBefore(from) && !f.at().isAfter(to))
                .toList();
    }

    /** Each word from where it was first said to the next one, as far as it is on the screen. */
    private List<Stretch> crystals(Instant from, Instant last) {
        List<TraceView.SeedTurn> turns = view.seed();
        List<Stretch> stretches = new ArrayList<>();
        Instant end = state.at();
        for (int i = turns.size() - 1; i >= 0 && end.isAfter(from); i--) {
            TraceView.SeedTurn turn = turns.get(i);
            Instant begin = turn.from().isBefore(from) ? from : turn.from();
            Instant until = end.isAfter(last) ? last : end;
            if (turn.word().isPresent() && begin.isBefore(until))
                stretches.add(0, new Stretch(begin, until, turn.word().get(), turn.thick()));
            end = turn.from();
        }
        return stretches;
    }

    private List<Gap> gaps(Instant from) {
        return view.gaps().stream()
                .filter(g -> g.to().isAfter(from))
                .map(g -> new Gap(g.from(), g.to()))
                .toList();
    }
}
