package fifthform.curves.alarm;

import java.util.Locale;

/** How soon the maker has to act; least first. */
public enum Priority {
    ADVISE,
    PROMPT,
    URGENT;

    /** The word in files and on screens. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
