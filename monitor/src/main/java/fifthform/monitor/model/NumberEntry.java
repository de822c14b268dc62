package fifthform.monitor.model;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A number that is being typed, in the unit of the screen. It takes digits, one point or comma, a minus before
 * them, and the key that takes one back; everything else is left to whoever else wants it, so that an alarm can still be
 * seen to with a number half typed.
 *
 * @param text what has been typed
 */
public record NumberEntry(String text) {
    /** Enter. */
    public static final char DONE = '\r';

    /** Escape. */
    public static final char LEAVE = 27;

    /** Nothing typed yet. */
    public static final NumberEntry EMPTY = new NumberEntry("");

    private static final int LONGEST = 6;

    public NumberEntry {
        Objects.requireNonNull(text, "text");
    }

    /** Whether this character is for the number and for nobody else. */
    public static boolean takes(char typed) {
        return Character.digit(typed, 10) >= 0 && typed < 128
                || typed == '.'
                || typed == ','
                || typed == '-'
                || isBackspace(typed)
                || typed == DONE
                || typed == '\n'
                || typed == LEAVE;
    }

    private static boolean isBackspace(char typed) {
        return typed == 8 || typed == 127;
    }

    /** With one more character; unchanged where it does not fit. */
    public NumberEntry with(char typed) {
        if (isBackspace(typed)) return text.isEmpty() ? this : new NumberEntry(text.substring(0, text.length() - 1));
        char point = typed == ',' ? '.' : typed;
        boolean fits = text.length() < LONGEST
                && (Character.isDigit(point)
                        || (point == '.' && !text.contains("."))
                        || (point == '-' && text.isEmpty()));
        return fits ? new NumberEntry(text + point) : this;
    }

    /** The number, where it is one. */
    public OptionalDouble value() {
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException notYet) {
            return OptionalDouble.empty();
        }
    }
}
