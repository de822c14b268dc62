package fifthform.curves.learning;

import java.util.Locale;

/** What is on the bars that does not belong there. */
public enum Bloom {
    NONE,
    /** A grey or white veil. */
    VEIL,
    STREAKS,
    BLOTCHES,
    /** Rough and dry; it does not melt under a finger. */
    SUGAR,
    /** Spots or rings of oil. */
    OILY,
    /** Something grows on them. */
    FUZZY;

    /** The word in files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
