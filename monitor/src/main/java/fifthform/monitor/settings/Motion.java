package fifthform.monitor.settings;

import java.util.Locale;

/** Whether anything on a screen blinks. */
public enum Motion {
    /** The symbol of a new alarm blinks once a second. */
    BLINKING,
    /** Nothing blinks: what would, stands. */
    STILL;

    /** The word in files and options. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
