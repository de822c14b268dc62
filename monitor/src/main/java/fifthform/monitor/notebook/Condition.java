package fifthform.monitor.notebook;

import java.util.Locale;

/** How much of a session there is. */
public enum Condition {
    /** Ended in good order, and all of it can be read. */
    WHOLE,
    /** Without its closing line: the program was cut off. */
    CUT_OFF,
    /** A running program writes it. */
    GOING_ON,
    /** Some of it is damaged; the rest is used. */
    IN_PART,
    /** Nothing of it can be used. */
    UNREADABLE,
    /** Not read yet; only its name is known. */
    UNREAD;

    /** The word in files and answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
