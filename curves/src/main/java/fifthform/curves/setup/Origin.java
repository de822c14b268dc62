package fifthform.curves.setup;

import java.util.Locale;

/** Whether readings come from a kitchen or from a simulation; never mixed in lists, learning or totals. */
public enum Origin {
    REAL,
    SIMULATED;

    /** The word in files: {@code real} or {@code simulated}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
