package fifthform.curves.alarm;

/** What it takes for an alarm to go away. */
public enum Ending {
    /** Its condition is over. */
    WHEN_OVER,
    /** Its condition is over and somebody has seen it. */
    WHEN_SEEN,
    /** The maker has decided what to do with the batch; a condition that is over is not enough. */
    BY_CHOICE
}
