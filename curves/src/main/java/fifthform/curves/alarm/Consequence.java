package fifthform.curves.alarm;

/** What happens if nobody acts. */
public enum Consequence {
    /** The batch must be tempered again, or what is recorded is untrue. */
    BATCH,
    /** Quality suffers: thick, streaks, rough snap. */
    QUALITY,
    /** Only inconvenience. */
    INCONVENIENCE
}
