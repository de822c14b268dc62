package fifthform.curves.estimate;

/** Whether the estimate speaks of now. */
public enum Freshness {
    /** A good reading came just now. */
    FRESH,
    /** Readings come, but there is reason to doubt them. */
    DOUBTFUL,
    /** No reading has come for too long; the numbers are of the past. */
    OLD
}
