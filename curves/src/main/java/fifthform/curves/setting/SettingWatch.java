package fifthform.curves.setting;

import fifthform.curves.setting.SetEvent.Kind;
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
 * Bars that set: a pure function of state and input. The tip lies beside the moulds, or against the underside of one. That
 * they came out is seen by the reading as well: a rise that no fridge makes.
 *
 * <p>Limits from this project's table of faults: air below 8 °C or a fall of more than 3 K/min in the first ten minutes
 * gives other forms, more than 15 min above 24 °C a grey core (numbers: common practice, no source).
 *
 * @param plan what is to be
 * @param begun when they went in
 * @param last the latest reading
 * @param said what has been said already
 * @param out when they came out
 * @param record what is kept of it
 * @param minuteAgo a reading of about a minute before, to see falls and rises by
 * @param warmSince since when it is above 24 °C
 */
public record SettingWatch(
        SetPlan plan,
        Optional<Instant> begun,
        Optional<SetInput.Reading> last,
        Set<Kind> said,
        Optional<Instant> out,
        SetRecord record,
        Optional<SetInput.Reading> minuteAgo,
        Optional<Instant> warmSince) {
    /** Above this the heat of setting stays in, °C. */
    static final double WARM_CELSIUS = 24;

    /** So long above it greys the core. */
    private static final Duration WARM_FOR = Duration.ofMinutes(15);

    /** Below this in the first ten minutes other forms set, °C. */
    private static final double COLD_CELSIUS = 8;

    private static final Duration EARLY = Duration.ofMinutes(10);

    /** A tip needs so long to come to rest in air. Own choice. */
    private static final Duration TIP_RESTS = Duration.ofMinutes(3);

    private static final double FAST_KELVIN_PER_MINUTE = 3;

    /** A door that is opened warms the air by a degree or two and not for long; this much above the coldest is out. Own choice. */
    private static final double OUT_KELVIN = 4;

    private static final Duration SILENCE = Duration.ofMinutes(1);

    public SettingWatch {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(begun, "begun");
        Objects.requireNonNull(last, "last");
        said = EnumSets.kept(Kind.class, said);
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(record, "record");
        Objects.requireNonNull(minuteAgo, "minuteAgo");
        Objects.requireNonNull(warmSince, "warmSince");
    }

    /** What came of one input. */
    public record Step(SettingWatch after, List<SetEvent> events) {
        public Step {
            Objects.requireNonNull(after, "after");
            events = List.copyOf(events);
        }
    }

    /** Before anything has happened. */
    public static SettingWatch of(SetPlan plan) {
        SetRecord nothing = new SetRecord(
                plan.place(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Duration.ZERO,
                0,
                Duration.ZERO,
                OptionalDouble.empty(),
                plan.air().map(a -> OptionalDouble.of(a.dewCelsius())).orElse(OptionalDouble.empty()));
        return new SettingWatch(
                plan,
                Optional.empty(),
                Optional.empty(),
                EnumSet.noneOf(Kind.class),
                Optional.empty(),
                nothing,
                Optional.empty(),
                Optional.empty());
    }

    /** Whether nothing more is to come: they are out, and may be opened. */
    public boolean isOver() {
        return out.isPresent() && (said.contains(Kind.MAY_OPEN) || said.contains(Kind.MAYBE_WET));
    }

    /** The watch after {@code input}. */
    public Step next(SetInput input) {
        List<SetEvent> events = new ArrayList<>();
        SettingWatch after = begunBy(input, events);
        if (input instanceof SetInput.Reading reading) after = after.read(reading, events);
        else if (input instanceof SetInput.Said word) after = after.told(word, events);
        after = after.waited(input.at(), events);
        return new Step(after, events);
    }

    private SettingWatch begunBy(SetInput input, List<SetEvent> events) {
        if (begun.isPresent()) return this;
        events.add(SetEvent.of(input.at(), Kind.BEGUN));
        return new SettingWatch(
                plan, Optional.of(input.at()), last, with(Kind.BEGUN), out, record, minuteAgo, warmSince);
    }

    private Set<Kind> with(Kind kind) {
        Set<Kind> more = EnumSets.of(Kind.class, said);
        more.add(kind);
        return more;
    }

    private SettingWatch saying(Kind kind) {
        return new SettingWatch(plan, begun, last, with(kind), out, record, minuteAgo, warmSince);
    }

    private SettingWatch read(SetInput.Reading r, List<SetEvent> events) {
        SettingWatch here = this;
        if (said.contains(Kind.SILENT)) {
            events.add(SetEvent.of(r.at(), Kind.READS_AGAIN).reading(r.celsius()));
            Set<Kind> fewer = EnumSets.of(Kind.class, said);
            fewer.remove(Kind.SILENT);
            here = new SettingWatch(plan, begun, last, fewer, out, record, minuteAgo, warmSince);
        }
        boolean newMinute = minuteAgo
                .filter(m -> Duration.between(m.at(), r.at()).compareTo(Duration.ofMinutes(1)) < 0)
                .isEmpty();
        double fall = fall(r);
        here = new SettingWatch(
                plan,
                begun,
                Optional.of(r),
                here.said,
                out,
                out.isPresent() ? record : counted(r, fall),
                newMinute ? Optional.of(r) : minuteAgo,
                r.celsius() > WARM_CELSIUS ? warmSince.or(() -> Optional.of(r.at())) : Optional.empty());
        return out.isPresent() ? here.outside(r, events) : here.inside(r, fall, events);
    }

    /** K/min, over the last minute or so; 0 while the tip comes to rest. */
    private double fall(SetInput.Reading r) {
        boolean rests = Duration.between(begun.orElse(r.at()), r.at()).compareTo(TIP_RESTS) > 0;
        if (!rests || minuteAgo.isEmpty()) return 0;
        double minutes = Duration.between(minuteAgo.get().at(), r.at()).toMillis() / 60_000.0;
        return minutes < 0.7 ? 0 : (minuteAgo.get().celsius() - r.celsius()) / minutes;
    }

    private SetRecord counted(SetInput.Reading r, double fall) {
        Duration in = Duration.between(begun.orElse(r.at()), r.at());
        boolean early = in.compareTo(EARLY) <= 0;
        boolean warmBefore = last.filter(l -> l.celsius() > WARM_CELSIUS).isPresent();
        Duration passed = last.map(l -> Duration.between(l.at(), r.at())).orElse(Duration.ZERO);
        Duration warm =
                warmBefore && passed.compareTo(SILENCE) < 0 ? record.warm().plus(passed) : record.warm();
        return new SetRecord(
                record.place(),
                early
                        ? OptionalDouble.of(
                                Math.min(record.coldestEarlyCelsius().orElse(r.celsius()), r.celsius()))
                        : record.coldestEarlyCelsius(),
                OptionalDouble.of(Math.min(record.coldestCelsius().orElse(r.celsius()), r.celsius())),
                warm,
                Math.max(record.fastestKelvinPerMinute(), fall),
                in,
                record.takenOutCelsius(),
                record.dewCelsius());
    }

    private SettingWatch inside(SetInput.Reading r, double fall, List<SetEvent> events) {
        SettingWatch here = this;
        Duration in = Duration.between(begun.orElseThrow(), r.at());
        boolean rests = in.compareTo(TIP_RESTS) > 0;
        if (rests && in.compareTo(EARLY) <= 0 && r.celsius() < COLD_CELSIUS) {
            here = here.once(
                    SetEvent.of(r.at(), Kind.TOO_COLD).reading(r.celsius()).against(COLD_CELSIUS), events);
        }
        if (fall > FAST_KELVIN_PER_MINUTE && in.compareTo(EARLY) <= 0) {
            here = here.once(SetEvent.of(r.at(), Kind.TOO_FAST).reading(r.celsius()), events);
        }
        boolean longWarm = warmSince
                .filter(w -> Duration.between(w, r.at()).compareTo(WARM_FOR) >= 0)
                .isPresent();
        if (longWarm) {
            here = here.once(
                    SetEvent.of(r.at(), Kind.TOO_WARM)
                            .reading(r.celsius())
                            .against(WARM_CELSIUS)
                            .lasting(WARM_FOR),
                    events);
        }
        double coldest = record.coldestCelsius().orElse(r.celsius());
        boolean cameOut = rests && plan.place() == CoolingPlace.FRIDGE && r.celsius() > coldest + OUT_KELVIN;
        return cameOut ? here.takenOut(r.at(), coldest, events) : here;
    }

    private SettingWatch told(SetInput.Said word, List<SetEvent> events) {
        return switch (word.act()) {
            case PULLS_AWAY -> once(SetEvent.of(word.at(), Kind.PULLS_AWAY), events);
            case TAKEN_OUT ->
                out.isPresent()
                        ? this
                        : takenOut(
                                word.at(), last.map(SetInput.Reading::celsius).orElse(plan.placeCelsius()), events);
        };
    }

    private SettingWatch takenOut(Instant at, double celsius, List<SetEvent> events) {
        SetRecord known = new SetRecord(
                record.place(),
                record.coldestEarlyCelsius(),
                record.coldestCelsius(),
                record.warm(),
                record.fastestKelvinPerMinute(),
                Duration.between(begun.orElse(at), at),
                OptionalDouble.of(celsius),
                record.dewCelsius());
        SettingWatch here = new SettingWatch(plan, begun, last, said, Optional.of(at), known, minuteAgo, warmSince);
        if (plan.air().isEmpty()) {
            return here.once(SetEvent.of(at, Kind.MAYBE_WET).reading(celsius), events);
        }
        Condensation air = plan.air().get();
        if (!air.wets(celsius)) {
            return here.once(SetEvent.of(at, Kind.MAY_OPEN).reading(celsius).against(air.safeCelsius()), events);
        }
        return here.once(
                SetEvent.of(at, Kind.KEEP_CLOSED)
                        .reading(celsius)
                        .against(air.safeCelsius())
                        .lasting(air.closedFor(celsius, plan.millimetres())),
                events);
    }

    /** Outside the tip warms sooner than a bar; the time that was said must have passed as well. */
    private SettingWatch outside(SetInput.Reading r, List<SetEvent> events) {
        if (plan.air().isEmpty()) return this;
        Condensation air = plan.air().get();
        Duration since = Duration.between(out.orElseThrow(), r.at());
        Optional<Duration> closed = air.closedFor(record.takenOutCelsius().orElse(r.celsius()), plan.millimetres());
        boolean longEnough = closed.filter(c -> since.compareTo(c) >= 0).isPresent();
        boolean warm = !air.wets(r.celsius());
        return longEnough && warm
                ? once(SetEvent.of(r.at(), Kind.MAY_OPEN).reading(r.celsius()).against(air.safeCelsius()), events)
                : this;
    }

    private SettingWatch waited(Instant at, List<SetEvent> events) {
        SettingWatch here = this;
        Duration in = Duration.between(begun.orElse(at), at);
        if (out.isEmpty() && in.compareTo(plan.look()) >= 0 && !said.contains(Kind.PULLS_AWAY)) {
            here = here.once(SetEvent.of(at, Kind.LOOK).lasting(plan.look()), events);
        }
        if (out.isEmpty() && in.compareTo(plan.longest()) >= 0) {
            here = here.once(SetEvent.of(at, Kind.COME_OUT).lasting(plan.longest()), events);
        }
        Instant heard = last.map(SetInput.Reading::at).orElse(begun.orElse(at));
        if (Duration.between(heard, at).compareTo(SILENCE) > 0) {
            here = here.once(SetEvent.of(at, Kind.SILENT), events);
        }
        return here;
    }

    /** Each is said once. */
    private SettingWatch once(SetEvent event, List<SetEvent> events) {
        if (said.contains(event.kind())) return this;
        events.add(event);
        return saying(event.kind());
    }
}
