package fifthform.curves.learning;

import java.util.Locale;

/** How the side that lay in the mould shines. */
public enum Gloss {
    BRIGHT,
    SATIN,
    DULL;

    /** The word in files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
