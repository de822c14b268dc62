package fifthform.curves.signal;

/** Why a number should not be trusted although the adapter sent it as a good one. */
public enum Doubt {
    /** It jumped as chocolate cannot. */
    JUMPS,
    /** It moves faster than chocolate can. */
    TOO_FAST,
    /** It is far noisier than it was at rest. */
    NOISY,
    /** The cold junction is at a temperature no kitchen has. */
    JUNCTION
}
