package fifthform.curves.setup;

import java.time.Duration;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A planned stay in the working range, for example while moulds are filled.
 *
 * @param time how long, 1 min to 8 h
 * @param warmth what keeps it warm
 */
public record Holding(Duration time, Warmth warmth) {
    /** No shorter one needs a plan. */
    public static final Duration SHORTEST = Duration.ofMinutes(1);

    /** A working day. */
    public static final Duration LONGEST = Duration.ofHours(8);

    /** What keeps the bowl warm. */
    public enum Warmth {
        /** Short stays over the warm bath. */
        BATH,
        /** Seconds of warm air from a hair dryer or a heat gun. */
        AIR,
        /** A box whose air is kept at a temperature; the bowl stands in it all the time. */
        BOX;

        /** The word in files and for commands: {@code bath}, {@code air}, {@code box}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The warmth with this {@link #word()}, if there is one. */
        public static Optional<Warmth> fromWord(String word) {
            for (Warmth each : values())
                if (each.word().equals(word.toLowerCase(Locale.ROOT))) return Optional.of(each);
            return Optional.empty();
        }
    }

    public Holding {
        Objects.requireNonNull(time, "time");
        if (time.compareTo(SHORTEST) < 0 || time.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException("time must be 1 min to 8 h, was " + time);
        }
        Objects.requireNonNull(warmth, "warmth");
    }
}
