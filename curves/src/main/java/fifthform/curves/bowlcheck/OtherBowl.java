package fifthform.curves.bowlcheck;

import java.util.Locale;

/** How a bowl differs from the one it is said to be. */
public enum OtherBowl {
    /** More chocolate in it, or a wall that holds more heat or lets it through more slowly. */
    HEAVIER,
    /** The other way round. */
    LIGHTER;

    /** The word in files and on screens. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
