package fifthform.curves.learning;

import java.util.Locale;

/** How a bar breaks at room temperature. */
public enum Snap {
    CLEAN,
    SOFT,
    BENDS;

    /** The word in files and commands. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
