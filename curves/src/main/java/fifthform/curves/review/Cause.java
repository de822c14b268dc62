package fifthform.curves.review;

import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that went wrong in a batch, or that was left open, with its time and figures. What each kind counts is said
 * there; a figure that a kind has not is empty.
 *
 * @param kind what
 * @param phase in which phase
 * @param at when it began, or when it was too late for it
 * @param lasted how long it lasted
 * @param celsius the temperature it came to, °C
 * @param limitCelsius the limit it is held against, °C
 * @param off how late, how short or how long, as the kind says
 * @param said what the program had said of it, and when that was
 */
public record Cause(
        Kind kind,
        Phase phase,
        Instant at,
        Optional<Duration> lasted,
        OptionalDouble celsius,
        OptionalDouble limitCelsius,
        Optional<Duration> off,
        Said said) {
    public Cause {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(lasted, "lasted");
        Objects.requireNonNull(celsius, "celsius");
        Objects.requireNonNull(limitCelsius, "limitCelsius");
        Objects.requireNonNull(off, "off");
        Objects.requireNonNull(said, "said");
    }

    /** Whether it spoils a temper, or only was left open. */
    public enum Weight {
        /** Likely to have cost the temper, or to have kept the program from guarding it. */
        FAULT,
        /** Worth knowing; says nothing against the batch. */
        REMARK
    }

    /** What went wrong. */
    public enum Kind {
        /** Never hot enough to erase the old crystals: {@code celsius} the hottest, {@code limitCelsius} what it needs. */
        MELTED_TOO_COOL(Weight.FAULT),
        /** Hot enough, not for long enough: {@code off} the time there. */
        MELTED_TOO_SHORT(Weight.FAULT),
        /** Hotter than the recipe allows in the melt: {@code celsius} the hottest, {@code lasted} above the limit. */
        MELTED_TOO_HOT(Weight.FAULT),
        /** Rewarmed without having been cold enough for crystals: {@code celsius} the coldest. */
        COOLED_TOO_LITTLE(Weight.FAULT),
        /** Cold enough, and too few crystals by the model: {@code off} the time in the cool range. */
        HELD_TOO_SHORT(Weight.FAULT),
        /** Cooled below the lowest the recipe allows: {@code celsius} the coldest, {@code lasted} below. */
        COOLED_TOO_DEEP(Weight.FAULT),
        /** Too thick by the time: the cool step lasted far longer than asked for. {@code off} the time. */
        COOLED_TOO_LONG(Weight.FAULT),
        /** Nobody stirred while it stood in the cold water: {@code off} the time seen at rest. */
        NOT_STIRRED(Weight.FAULT),
        /** The water of the rewarm was hotter than it should be: {@code celsius} the bath. */
        BATH_TOO_HOT(Weight.FAULT),
        /** Lifted late, and it cost the range: {@code off} how late, {@code celsius} the peak that followed. */
        LIFTED_LATE(Weight.FAULT),
        /** Above the warning temperature: {@code celsius} the hottest, {@code lasted} how long. */
        OVERSHOT(Weight.FAULT),
        /** The seed was likely lost to heat: {@code celsius} the hottest up to then. */
        SEED_LOST(Weight.FAULT),
        /** Fell below the working range and thickened while it was worked: {@code celsius} the coldest. */
        WORKED_TOO_COOL(Weight.FAULT),
        /** The probe was out of the chocolate: {@code lasted} how long. */
        PROBE_OUT(Weight.FAULT, true),
        /** Probe or wire faulty: {@code lasted} how long. */
        PROBE_FAULTY(Weight.FAULT, true),
        /** Readings that could not be trusted: {@code lasted} how long. */
        READINGS_DOUBTFUL(Weight.FAULT, true),
        /** No readings: {@code lasted} how long. */
        READINGS_MISSING(Weight.FAULT, true),
        /** A cue stood and nobody acted: {@code lasted} how long. */
        CUE_IGNORED(Weight.REMARK),
        /** The working range was never reached. */
        UNFINISHED(Weight.REMARK),
        /** Nobody tried a sample before the batch ended. */
        NOT_PROVED(Weight.REMARK);

        private final Weight weight;
        private final boolean ofInstrument;

        Kind(Weight weight) {
            this(weight, false);
        }

        Kind(Weight weight, boolean ofInstrument) {
            this.weight = weight;
            this.ofInstrument = ofInstrument;
        }

        /** The word in files: {@code lifted-late}, … */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What the program had said about it. */
    public sealed interface Said {
        /** It had no word to say. */
        record Nothing() implements Said {}

        /**
         * A cue or an alarm stood.
         *
         * @param word its name in files
         * @param at since when
         */
        record Told(String word, Instant at) implements Said {
            public Told {
                Objects.requireNonNull(word, "word");
                Objects.requireNonNull(at, "at");
            }
        }
    }

    /** Whether it spoils a temper. While it melts there is none to spoil: an instrument's trouble there is a remark. */
    public Weight weight() {
        return kind.ofInstrument && phase == Phase.MELT ? Weight.REMARK : kind.weight;
    }

    /** A cause without figures yet. */
    static Cause of(Kind kind, Phase phase, Instant at) {
        return new Cause(
                kind,
                phase,
                at,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                new Said.Nothing());
    }

    Cause lasting(Duration time) {
        return new Cause(kind, phase, at, Optional.of(time), celsius, limitCelsius, off, said);
    }

    Cause reaching(double reachedCelsius) {
        return new Cause(kind, phase, at, lasted, OptionalDouble.of(reachedCelsius), limitCelsius, off, said);
    }

    Cause against(double limit) {
        return new Cause(kind, phase, at, lasted, celsius, OptionalDouble.of(limit), off, said);
    }

    Cause by(Duration howFarOff) {
        return new Cause(kind, phase, at, lasted, celsius, limitCelsius, Optional.of(howFarOff), said);
    }

    Cause told(String word, Instant since) {
        return new Cause(kind, phase, at, lasted, celsius, limitCelsius, off, new Said.Told(word, since));
    }
}
