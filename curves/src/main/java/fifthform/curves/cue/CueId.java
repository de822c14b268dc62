package fifthform.curves.cue;

import java.util.Locale;
import java.util.Optional;

/** The expected steps the maker is told of, by the names used in files and by scripts. */
public enum CueId {
    /** Everything has melted: into the cold water. */
    MELTED,
    /** Cool enough that seed keeps its crystals: add it. */
    SEED_NOW,
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
    /** A short dip has lasted as long as was asked for: off now. */
    OFF_NOW,
    /** The bowl has just left the water: wipe it and stir, so that what is under way arrives and shows. */
    WIPE_AND_STIR,
    /** The peak fell short: back over the bath for a few seconds. */
    PUT_BACK,
    /** Short dips hardly move the bowl: this water is too cool. */
    WEAK_BATH,
    /** Settled in the working range: prove on a sample, then pour. */
    IN_RANGE,
    /** It will leave the working range below soon: a few seconds of warmth. */
    TOUCH_OF_WARMTH,
    /** It is thickening and no warmth has come: so much time is left to pour. */
    THICKENS_SOON;

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
