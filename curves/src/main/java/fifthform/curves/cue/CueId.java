package fifthform.curves.cue;

import java.util.Locale;
import java.util.Optional;

/** The expected steps the maker is told of, by the names used in files and by scripts. */
public enum CueId {
    /** Everything has melted: into the cold water. */
    MELTED,
    /** Out of the cold water now; it sinks on to the cool target. */
    STOP_COOLING,
    /** Stay in the cool range and stir, so that crystals form. */
    STIR_ON,
    /** Held long enough: back over warm water. */
    CRYSTALS_ENOUGH,
    /** The second to lift comes within a quarter of a minute. */
    GET_READY,
    /** Lift the bowl now. */
    LIFT_NOW,
    /** The peak fell short: back over the bath for a few seconds. */
    PUT_BACK,
    /** Settled in the working range: prove on a sample, then pour. */
    IN_RANGE;

    /** The name in files and for scripts: {@code melted}, {@code stop-cooling}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The cue with this {@link #word()}, if there is one. */
    public static Optional<CueId> fromWord(String word) {
        for (CueId id : values()) if (id.word().equals(word)) return Optional.of(id);
        return Optional.empty();
    }
}
