package fifthform.curves.review;

import java.util.Locale;

/** How a batch went, as far as its temperatures tell; only a sample proves temper. */
public enum Verdict {
    /** Reached the working range, was cool enough before, and was never above it by more than a little. */
    IN_RANGE,
    /** Passed the warning temperature, but stayed below melt-out. */
    OVER_RANGE,
    /** Reached melt-out: the good crystals were lost, or some of them. */
    MELT_OUT,
    /** Came to the working range without having been cold enough for long enough to make crystals. */
    NOT_COOLED,
    /** Ended before it reached the working range. */
    UNFINISHED;

    /** The word in files: {@code in-range}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
