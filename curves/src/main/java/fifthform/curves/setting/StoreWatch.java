package fifthform.curves.setting;

import fifthform.curves.setting.StoreEvent.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A store in which bars lie, watched for weeks: a pure function of state and input. Readings are gathered into minutes;
 * all else goes by those, so that a log of minutes says the same when it is read again.
 *
 * <p>Limits: 15 to 20 °C (Greweling 2007, read), bloom above 24 °C (two storage pages, read), form V begins to melt above
 * 25 to 28 °C (solid-fat table, memory), condensation when taken out below 10 °C (food-info.net QA FP44, read), more than
 * 3 K a day (common practice, no source).
 *
 * @param open the minute that is being gathered
 * @param last the minute before
 * @param hour the minutes of the last hour, oldest first
 * @param day quarters of an hour of the last day, oldest first, for its swing
 * @param standing what stands and has been said
 * @param record what is kept of it all
 */
public record StoreWatch(
        Optional<StoreMinute> open,
        Optional<StoreMinute> last,
        List<StoreMinute> hour,
        List<StoreMinute> day,
        Set<Kind> standing,
        StoreRecord record) {
    /** Up to here bars keep well, °C. */
    public static final double RECOMMENDED_CELSIUS = 20;

    /** Above this they bloom, °C. */
    public static final double LIMIT_CELSIUS = 24;

    /** Above this form V melts, °C. */
    public static final double MELTING_CELSIUS = 28;

    /** Below this, water comes onto what is taken out, °C. */
    public static final double COLD_CELSIUS = 10;

    /** More than this within a day is a swing, K. */
    public static final double SWING_KELVIN = 3;

    /** So near to the limit it is time to act, K: no cheap probe is better than that. Own choice. */
    private static final double NEAR_KELVIN = 1;

    /** So far ahead a climb is told. Own choice: time to carry bars to another place. */
    private static final Duration AHEAD = Duration.ofHours(2);

    /** Below this a climb is told by nobody: rooms warm up every day, °C. */
    private static final double CLIMB_FROM_CELSIUS = 20.5;

    /** Slower than this the trend of an hour is noise, K/h. */
    private static final double LEAST_KELVIN_PER_HOUR = 0.3;

    /** What stands ends this far back, K. */
    private static final double BACK_KELVIN = 0.7;

    private static final Duration QUARTER = Duration.ofMinutes(15);
    private static final Duration SILENCE = Duration.ofMinutes(10);
    private static final int HOUR_MINUTES = 60;
    private static final int LEAST_MINUTES = 30;

    public static final StoreWatch START = new StoreWatch(
            Optional.empty(), Optional.empty(), List.of(), List.of(), EnumSet.noneOf(Kind.class), StoreRecord.NOTHING);

    public StoreWatch {
        Objects.requireNonNull(open, "open");
        Objects.requireNonNull(last, "last");
        hour = List.copyOf(hour);
        day = List.copyOf(day);
        standing = EnumSets.kept(Kind.class, standing);
        Objects.requireNonNull(record, "record");
    }

    /**
     * What came of one input.
     *
     * @param minute the minute that was closed by it, for the log
     */
    public record Step(StoreWatch after, List<StoreEvent> events, Optional<StoreMinute> minute) {
        public Step {
            Objects.requireNonNull(after, "after");
            events = List.copyOf(events);
            Objects.requireNonNull(minute, "minute");
        }
    }

    /** The watch after {@code input}. */
    public Step next(SetInput input) {
        boolean over =
                open.filter(o -> !minuteOf(o.at()).equals(minuteOf(input.at()))).isPresent();
        Step closed = over ? close() : new Step(this, List.of(), Optional.empty());
        StoreWatch here = closed.after();
        List<StoreEvent> events = new ArrayList<>(closed.events());
        if (input instanceof SetInput.Reading r) here = here.gathered(r);
        else here = here.waited(input.at(), events);
        return new Step(here, events, closed.minute());
    }

    /** The watch at the end: the minute that is open counts as far as it came. */
    public Step end() {
        return open.isPresent() ? close() : new Step(this, List.of(), Optional.empty());
    }

    /** The watch after a minute of a log. */
    public Step next(StoreMinute minute) {
        List<StoreEvent> events = new ArrayList<>();
        StoreWatch after = taken(minute, events);
        return new Step(after, events, Optional.of(minute));
    }

    private static Instant minuteOf(Instant at) {
        return Instant.ofEpochSecond(Math.floorDiv(at.getEpochSecond(), 60) * 60);
    }

    private StoreWatch gathered(SetInput.Reading r) {
        StoreMinute now = open.map(o -> o.with(r.at(), r.celsius())).orElse(StoreMinute.of(r.at(), r.celsius()));
        return new StoreWatch(Optional.of(now), last, hour, day, standing, record);
    }

    private Step close() {
        StoreMinute minute = open.orElseThrow();
        List<StoreEvent> events = new ArrayList<>();
        StoreWatch after = new StoreWatch(Optional.empty(), last, hour, day, standing, record).taken(minute, events);
        return new Step(after, events, Optional.of(minute));
    }

    private StoreWatch taken(StoreMinute minute, List<StoreEvent> events) {
        Duration passed = last.map(l -> Duration.between(l.at(), minute.at())).orElse(Duration.ZERO);
        if (passed.isNegative()) passed = Duration.ZERO;
        boolean gap = passed.compareTo(SILENCE) > 0;
        List<StoreMinute> recent = gap ? new ArrayList<>() : new ArrayList<>(hour);
        recent.add(minute);
        recent.removeIf(m -> Duration.between(m.at(), minute.at()).toMinutes() >= HOUR_MINUTES);
        List<StoreMinute> quarters = quarters(minute);
        double swing = swing(quarters);
        StoreWatch here = new StoreWatch(
                open, Optional.of(minute), recent, quarters, standing, record.with(minute, passed, gap, swing));
        return here.judged(minute, swing, events);
    }

    private List<StoreMinute> quarters(StoreMinute minute) {
        List<StoreMinute> all = new ArrayList<>(day);
        int end = all.size() - 1;
        boolean goesOn = end >= 0
                && Math.floorDiv(all.get(end).at().getEpochSecond(), QUARTER.toSeconds())
                        == Math.floorDiv(minute.at().getEpochSecond(), QUARTER.toSeconds());
        if (goesOn) all.set(end, all.get(end).with(minute.at(), minute.meanCelsius()));
        else all.add(StoreMinute.of(minute.at(), minute.meanCelsius()));
        all.removeIf(q -> Duration.between(q.at(), minute.at()).compareTo(Duration.ofDays(1)) > 0);
        return all;
    }

    /** By means of quarters of an hour, so that a hand on the probe is no swing. */
    private static double swing(List<StoreMinute> quarters) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (StoreMinute quarter : quarters) {
            low = Math.min(low, quarter.meanCelsius());
            high = Math.max(high, quarter.meanCelsius());
        }
        return quarters.isEmpty() ? 0 : high - low;
    }

    private StoreWatch judged(StoreMinute minute, double swing, List<StoreEvent> events) {
        double celsius = minute.meanCelsius();
        Set<Kind> now = EnumSets.of(Kind.class, standing);
        if (now.remove(Kind.SILENT)) events.add(StoreEvent.of(minute.at(), Kind.READS_AGAIN, celsius, LIMIT_CELSIUS));
        if (celsius > MELTING_CELSIUS && now.add(Kind.MELTING)) {
            now.add(Kind.WARM);
            events.add(StoreEvent.of(minute.at(), Kind.MELTING, celsius, MELTING_CELSIUS));
        } else if (celsius >= LIMIT_CELSIUS && now.add(Kind.WARM)) {
            events.add(StoreEvent.of(minute.at(), Kind.WARM, celsius, LIMIT_CELSIUS));
        }
        if (!now.contains(Kind.WARM) && !now.contains(Kind.NEARLY_WARM)) {
            nearlyWarm(minute).ifPresent(event -> {
                now.add(Kind.NEARLY_WARM);
                events.add(event);
            });
        }
        boolean isBack = celsius < LIMIT_CELSIUS - NEAR_KELVIN - BACK_KELVIN && until().isEmpty();
        boolean wasWarm = now.contains(Kind.WARM) || now.contains(Kind.NEARLY_WARM);
        if (isBack && wasWarm) {
            now.removeAll(EnumSet.of(Kind.WARM, Kind.NEARLY_WARM, Kind.MELTING));
            events.add(StoreEvent.of(minute.at(), Kind.COOL_AGAIN, celsius, LIMIT_CELSIUS));
        }
        if (swing > SWING_KELVIN && now.add(Kind.SWINGS)) {
            events.add(StoreEvent.of(minute.at(), Kind.SWINGS, swing, SWING_KELVIN));
        } else if (swing < SWING_KELVIN - BACK_KELVIN) {
            now.remove(Kind.SWINGS);
        }
        if (celsius < COLD_CELSIUS && now.add(Kind.COLD)) {
            events.add(StoreEvent.of(minute.at(), Kind.COLD, celsius, COLD_CELSIUS));
        } else if (celsius > COLD_CELSIUS + BACK_KELVIN) {
            now.remove(Kind.COLD);
        }
        return new StoreWatch(open, last, hour, day, now, record);
    }

    private Optional<StoreEvent> nearlyWarm(StoreMinute minute) {
        double celsius = minute.meanCelsius();
        StoreEvent event = StoreEvent.of(minute.at(), Kind.NEARLY_WARM, celsius, LIMIT_CELSIUS);
        Optional<Duration> until = until();
        if (until.isPresent()) return Optional.of(event.within(until.get()));
        return celsius >= LIMIT_CELSIUS - NEAR_KELVIN ? Optional.of(event) : Optional.empty();
    }

    /** When the limit would be met if it went on as in the last hour; empty where that is not soon, or nobody can tell. */
    public Optional<Duration> until() {
        if (hour.size() < LEAST_MINUTES) return Optional.empty();
        double celsius = hour.get(hour.size() - 1).meanCelsius();
        OptionalDouble slope = kelvinPerHour();
        boolean climbs =
                celsius >= CLIMB_FROM_CELSIUS && celsius < LIMIT_CELSIUS && slope.orElse(0) >= LEAST_KELVIN_PER_HOUR;
        if (!climbs) return Optional.empty();
        Duration until = Duration.ofSeconds(Math.round(3600 * (LIMIT_CELSIUS - celsius) / slope.getAsDouble()));
        return until.compareTo(AHEAD) <= 0 ? Optional.of(until) : Optional.empty();
    }

    /** The slope of the last hour, by least squares; empty before there is half of one. */
    public OptionalDouble kelvinPerHour() {
        if (hour.size() < LEAST_MINUTES) return OptionalDouble.empty();
        Instant end = hour.get(hour.size() - 1).at();
        double n = hour.size();
        double sumX = 0;
        double sumY = 0;
        double sumXx = 0;
        double sumXy = 0;
        for (StoreMinute minute : hour) {
            double x = Duration.between(end, minute.at()).toMillis() / 3.6e6;
            double y = minute.meanCelsius();
            sumX += x;
            sumY += y;
            sumXx += x * x;
            sumXy += x * y;
        }
        double spread = sumXx - sumX * sumX / n;
        return spread <= 0 ? OptionalDouble.empty() : OptionalDouble.of((sumXy - sumX * sumY / n) / spread);
    }

    private StoreWatch waited(Instant at, List<StoreEvent> events) {
        boolean silent = last.filter(l -> Duration.between(l.at(), at).compareTo(SILENCE) > 0)
                .isPresent();
        if (!silent || open.isPresent() || standing.contains(Kind.SILENT)) return this;
        events.add(StoreEvent.of(at, Kind.SILENT));
        Set<Kind> now = EnumSets.of(Kind.class, standing);
        now.add(Kind.SILENT);
        return new StoreWatch(open, last, hour, day, now, record);
    }
}
