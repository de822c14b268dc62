package fifthform.curves.proof;

import java.util.Locale;

/** Why a curve is not judged. */
public enum Unfit {
    /** The times of the readings stand still or go back. */
    TIMES_GO_BACK,
    /** There are too few readings: one in 10 s is the least. */
    TOO_FEW,
    /** The numbers are too coarse: steps of 0.5 °C at most. */
    COARSE,
    /** The sample never fell by 2 °C a minute. */
    NOT_IN_ICE,
    /** The sample was too cold when it went into the ice: crystals had grown on the way. */
    START_COLD,
    /** The sample was too warm when it went into the ice: its crystals were melting. */
    START_HOT,
    /** The bath was too warm. */
    WARM_BATH,
    /** The ice was gone before the end, so the bath was warming. */
    ICE_GONE,
    /** Readings are missing in the middle. */
    GAP,
    /** The readings waver: the sample was stirred or shaken. */
    STIRRED,
    /** The reading jumped: the tip slipped or was pulled. */
    MOVED,
    /** It fell faster than this cup can: the tip leaned on the wall, or the cup was not full. */
    AT_WALL,
    /** It fell more slowly than this cup does: too much chocolate, or too little ice around it. */
    TOO_SLOW,
    /** It ended too early. */
    TOO_SHORT;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
