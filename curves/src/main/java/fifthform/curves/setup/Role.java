package fifthform.curves.setup;

import java.util.Locale;

/** What a probe measures. */
public enum Role {
    /** The chocolate. Exactly one probe of a session has this role. */
    BOWL,
    /** The water under the bowl. */
    BATH,
    /** The air of the kitchen. */
    ROOM;

    /** The word in files: {@code bowl}, {@code bath}, {@code room}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
