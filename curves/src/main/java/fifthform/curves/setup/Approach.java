package fifthform.curves.setup;

import java.util.Locale;
import java.util.Optional;

/** How the working range is to be reached from below. */
public enum Approach {
    /** Short dips, each peak looked at, as long as nobody knows how this bowl answers; one lift where that is known. */
    TOUCHES_WHERE_UNSURE("touches"),
    /** One stay over the bath and one lift, however unsure the forecast is. */
    ONE_LIFT("one");

    private final String word;

    Approach(String word) {
        this.word = word;
    }

    /** The word in files and for commands: {@code touches} or {@code one}. */
    public String word() {
        return word;
    }

    /** The approach with this {@link #word()}, if there is one. */
    public static Optional<Approach> fromWord(String word) {
        for (Approach each : values()) if (each.word.equals(word.toLowerCase(Locale.ROOT))) return Optional.of(each);
        return Optional.empty();
    }
}
