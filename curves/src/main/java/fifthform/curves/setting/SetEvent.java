package fifthform.curves.setting;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What watching bars set has to say.
 *
 * @param at when
 * @param kind what
 * @param celsius the reading it rests on, °C
 * @param limitCelsius the limit it is held against, °C
 * @param time how long, as the kind says
 */
public record SetEvent(
        Instant at, Kind kind, OptionalDouble celsius, OptionalDouble limitCelsius, Optional<Duration> time) {
    /** What it says. */
    public enum Kind {
        /** Watching began. */
        BEGUN,
        /** Above 24 °C for a quarter of an hour: the heat of setting stays in the core. */
        TOO_WARM,
        /** Below 8 °C in the first ten minutes: other forms set first. */
        TOO_COLD,
        /** It falls faster than 3 K in a minute, well after the tip has come to rest. */
        TOO_FAST,
        /** Time to look whether they pull away; {@code time} since they went in. */
        LOOK,
        /** Long enough; {@code time} since they went in. */
        COME_OUT,
        /** The maker said that they pull away. */
        PULLS_AWAY,
        /** Out, and cold enough for water to come onto them: {@code time} that they stay closed, where it can be told. */
        KEEP_CLOSED,
        /** Out, and as cold as this nobody knows whether water comes: the humidity was not said. */
        MAYBE_WET,
        /** Warm enough to be opened. */
        MAY_OPEN,
        /** No reading for a minute. */
        SILENT,
        /** It reads again. */
        READS_AGAIN
    }

    public SetEvent {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(celsius, "celsius");
        Objects.requireNonNull(limitCelsius, "limitCelsius");
        Objects.requireNonNull(time, "time");
    }

    static SetEvent of(Instant at, Kind kind) {
        return new SetEvent(at, kind, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
    }

    SetEvent reading(double readCelsius) {
        return new SetEvent(at, kind, OptionalDouble.of(readCelsius), limitCelsius, time);
    }

    SetEvent against(double limit) {
        return new SetEvent(at, kind, celsius, OptionalDouble.of(limit), time);
    }

    SetEvent lasting(Duration howLong) {
        return new SetEvent(at, kind, celsius, limitCelsius, Optional.of(howLong));
    }

    SetEvent lasting(Optional<Duration> howLong) {
        return new SetEvent(at, kind, celsius, limitCelsius, howLong);
    }
}
