package fifthform.simulator.maker;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * A number on the thermometer that somebody remembers, to see which way it goes.
 *
 * @param at when it was there
 * @param celsius what it was, °C
 */
record Glance(Instant at, double celsius) {
    private static final Duration REMEMBERED_FOR = Duration.ofSeconds(10);

    /** Nothing looked at yet. */
    static final Glance NONE = new Glance(Instant.MIN, Double.NaN);

    Glance {
        Objects.requireNonNull(at, "at");
    }

    /** Takes note of the number now where the last was noted long ago. */
    Glance noted(Instant now, double shownCelsius) {
        boolean fresh = !at.equals(Instant.MIN) && Duration.between(at, now).compareTo(REMEMBERED_FOR) < 0;
        return fresh ? this : new Glance(now, shownCelsius);
    }

    /** K/s since then; 0 where it was only just. */
    double kelvinPerSecond(Instant now, double shownCelsius) {
        if (at.equals(Instant.MIN)) return 0;
        double seconds = Duration.between(at, now).toMillis() / 1000.0;
        return seconds < 3 ? 0 : (shownCelsius - celsius) / seconds;
    }
}
