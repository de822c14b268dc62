package fifthform.curves.cue;

import java.util.Locale;
import java.util.Optional;

/** The expected steps the maker is told of, by the names used in files and by scripts. */
public enum CueId {
    /** Everything has melted: into the cold water. */
    MELTED,
    /** Bars of a failed batch cool before everything old has melted: back over the hot water. */
    MELT_FIRST,
    /** In temper as it came: over gently warm water, and never past the working range. */
    WARM_UP,
    /** Cool enough that seed keeps its crystals: add it. */
    SEED_NOW,
    /** The seed has given its crystals: take out the lumps that are left. */
    SEED_OUT,
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
    /** Short dips hardly move the bowl, or a stay hardly warms it any more: this water is too cool. */
    WEAK_BATH,
    /** Settled in the working range: prove on a sample, then pour. */
    IN_RANGE,
    /** It will leave the working range below soon: a few seconds of warmth. */
    TOUCH_OF_WARMTH,
    /** The same, by some seconds of warm air. */
    TOUCH_OF_WARM_AIR,
    /** It drifts down in its warm box: the box warmer by so many kelvin. */
    BOX_WARMER,
    /** It drifts up in its warm box: the box cooler by so many kelvin. */
    BOX_COOLER,
    /** In a long hold crystals grow and it thickens: up to the upper end, or a little melted chocolate. */
    KEEP_FLUID,
    /** The planned hold is over. */
    HOLD_OVER,
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
