package fifthform.curves.learning;

import java.util.Locale;

/** Where on the bars. */
public enum BarPlace {
    ALL_OVER,
    THICK_PART,
    EDGES,
    MOULD_SIDE,
    OPEN_SIDE,
    /** Over nuts or other pieces. */
    OVER_PIECES,
    /** On some bars only. */
    FEW_BARS;

    /** The word in files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
