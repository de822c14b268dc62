package fifthform.curves.setup;

import java.util.Locale;

/** What the bowl is made of, as far as it matters for the heat stored in its wall. */
public enum BowlMaterial {
    STEEL,
    GLASS,
    PLASTIC,
    ALUMINIUM,
    UNKNOWN;

    /** The word in files and on screens. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
