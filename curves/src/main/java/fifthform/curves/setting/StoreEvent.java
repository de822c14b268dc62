package fifthform.curves.setting;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What watching a store has to say.
 *
 * @param at when
 * @param kind what
 * @param celsius the figure it rests on, °C or, of a swing, K
 * @param limitCelsius the limit it is held against, °C or K
 * @param time until it would be reached, where it climbs
 */
public record StoreEvent(
        Instant at, Kind kind, OptionalDouble celsius, OptionalDouble limitCelsius, Optional<Duration> time) {
    /** What it says. */
    public enum Kind {
        /** Near the limit, or on the way to it. */
        NEARLY_WARM,
        /** Above the limit at which bars bloom. */
        WARM,
        /** So warm that form V melts. */
        MELTING,
        /** Cool again. */
        COOL_AGAIN,
        /** It swung within a day by more than the limit. */
        SWINGS,
        /** So cold that water comes onto bars that are taken out. */
        COLD,
        /** No readings. */
        SILENT,
        /** It reads again. */
        READS_AGAIN;

        /** Whether somebody must hear of it at once. */
        public boolean isWarning() {
            return this != COOL_AGAIN && this != READS_AGAIN;
        }
    }

    public StoreEvent {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(celsius, "celsius");
        Objects.requireNonNull(limitCelsius, "limitCelsius");
        Objects.requireNonNull(time, "time");
    }

    static StoreEvent of(Instant at, Kind kind) {
        return new StoreEvent(at, kind, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
    }

    static StoreEvent of(Instant at, Kind kind, double celsius, double limit) {
        return new StoreEvent(at, kind, OptionalDouble.of(celsius), OptionalDouble.of(limit), Optional.empty());
    }

    StoreEvent within(Duration until) {
        return new StoreEvent(at, kind, celsius, limitCelsius, Optional.of(until));
    }
}
