package fifthform.curves.learning;

import java.util.Locale;

/** How the bars left their mould. */
public enum Release {
    BY_ITSELF,
    TAPPED,
    SOME_STUCK,
    STUCK;

    /** The word in files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
