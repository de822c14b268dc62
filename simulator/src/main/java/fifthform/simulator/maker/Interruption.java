package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.curves.cue.CueId;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Something out of the ordinary, planned for a moment of the batch: it comes between a maker and the bowl, or the hands
 * do it on purpose.
 *
 * @param what what it is
 * @param moment when it begins, counted from the first such moment
 * @param after so long after that moment
 * @param lasting how long it lasts
 * @param every from the beginning of one to that of the next, longer than it lasts; empty where it happens once
 */
public record Interruption(What what, Moment moment, Duration after, Duration lasting, Optional<Duration> every) {
    /** What may happen. */
    public enum What {
        /** The hands are away from the bowl, which stays where it is. */
        PHONE,
        /** The probe is out of the chocolate; the hands go on. */
        PROBE_OUT,
        /** The probe hangs in the air and nobody has seen it, so that no key says so. */
        PROBE_SLIPPED,
        /** The probe leans on the bowl's wall and nobody has seen it. */
        PROBE_AT_WALL,
        /** The computer's disk is full: nothing is recorded, whatever the hands do. */
        DISK_FULL,
        /** On purpose: hot air from a hair dryer, while the spoon goes on. */
        HAIR_DRYER,
        /** On purpose: hot air from a heat gun, while the spoon goes on. */
        HEAT_GUN,
        /** On purpose: once more into the warm water, unless the bowl was moved meanwhile. */
        WARM_BATH,
        /** On purpose: on to a shelf of the fridge. */
        FRIDGE,
        /** On purpose: wrapped in a warm cloth. */
        WARM_CLOTH;

        /** What comes between, in the files under {@code interrupted}. */
        public static final Set<What> MISHAPS =
                Collections.unmodifiableSet(EnumSet.of(PHONE, PROBE_OUT, PROBE_SLIPPED, PROBE_AT_WALL, DISK_FULL));

        /** What is done on purpose, in the files under {@code act}. */
        public static final Set<What> DEEDS =
                Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.copyOf(MISHAPS)));

        /** The name in files: {@code phone}, {@code probe-out}. */
        public String word() {
            return Interruption.word(name());
        }

        /** Where the bowl is put meanwhile, where it is put anywhere. */
        Optional<Spot> spot() {
            return switch (this) {
                case WARM_BATH -> Optional.of(Spot.WARM_BATH);
                case FRIDGE -> Optional.of(Spot.FRIDGE);
                case WARM_CLOTH -> Optional.of(Spot.WARM_CLOTH);
                case PHONE, PROBE_OUT, PROBE_SLIPPED, PROBE_AT_WALL, DISK_FULL, HAIR_DRYER, HEAT_GUN ->
                    Optional.empty();
            };
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
        Objects.requireNonNull(every, "every");
        if (every.filter(pause -> pause.compareTo(lasting) <= 0).isPresent()) {
            throw new IllegalArgumentException("every must be longer than lasting, was " + every);
        }
    }

    /** One that happens once. */
    public Interruption(What what, Moment moment, Duration after, Duration lasting) {
        this(what, moment, after, lasting, Optional.empty());
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
