package fifthform.curves.probecheck;

/** Why a point cannot be taken as things are. */
public enum Objection {
    /** No temperature comes from the probe. */
    NO_READING,
    /** The reading is nowhere near the point. */
    NOT_IN,
    STILL_FALLING,
    STILL_RISING,
    /** The reading jumps. */
    RESTLESS,
    /** Steady, and more than 5 K off. */
    TOO_FAR,
    /** The number does not move at all, as of a dead line. */
    STUCK
}
