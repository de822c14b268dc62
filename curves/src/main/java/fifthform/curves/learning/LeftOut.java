package fifthform.curves.learning;

import java.util.Locale;

/** Why a batch says nothing of the limit. */
public enum LeftOut {
    /** It never came to the working range after its crystals were made. */
    NOT_REACHED,
    /** It was not held cool long enough: marks on it may be those of too few crystals. */
    NOT_COOLED,
    /** Readings were missing for minutes while it was above the working range. */
    READINGS_MISSING,
    /** Its looks came too early to show anything. */
    TOO_EARLY,
    /** Its looks say too little. */
    UNCLEAR,
    /** What was seen has another cause than heat. */
    OTHER_CAUSE,
    /** Marks were seen, and later none: one of the looks is wrong. */
    CONTRADICTS;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
