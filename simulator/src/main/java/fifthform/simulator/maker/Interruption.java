package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.curves.cue.CueId;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Something that comes between a maker and the batch, planned for a moment of the batch.
 *
 * @param what what it is
 * @param moment when it begins, counted from the first such moment
 * @param after so long after that moment
 * @param lasting how long it lasts
 */
public record Interruption(What what, Moment moment, Duration after, Duration lasting) {
    /** Kinds of interruption. */
    public enum What {
        /** The hands are away from the bowl, which stays where it is. */
        PHONE,
        /** The probe is out of the chocolate; the hands go on. */
        PROBE_OUT;

        /** The name in files: {@code phone}, {@code probe-out}. */
        public String word() {
            return Interruption.word(name());
        }

        /** The kind with this {@link #word()}, if there is one. */
        public static Optional<What> fromWord(String word) {
            for (What what : values()) if (what.word().equals(word)) return Optional.of(what);
            return Optional.empty();
        }
    }

    /** A moment of a batch. */
    public sealed interface Moment {
        /** The moment with this name in files, a cue or a place: {@code lift-now}, {@code warm-bath}. */
        static Optional<Moment> fromWord(String word) {
            for (Spot spot : Spot.values()) {
                if (Interruption.word(spot.name()).equals(word)) return Optional.of(new FirstAt(spot));
            }
            return CueId.fromWord(word).map(Cued::new);
        }
    }

    /** The program gives this cue for the first time. */
    public record Cued(CueId cue) implements Moment {
        public Cued {
            Objects.requireNonNull(cue, "cue");
        }
    }

    /** The bowl stands there for the first time. */
    public record FirstAt(Spot spot) implements Moment {
        public FirstAt {
            Objects.requireNonNull(spot, "spot");
        }
    }

    public Interruption {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(moment, "moment");
        Require.notNegative(after, "after");
        Require.notNegative(lasting, "lasting");
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
