package fifthform.monitor.model;

import fifthform.monitor.model.WatchPicture.Kitchen;
import java.util.Optional;

/**
 * What one press means on every screen, with the character that says it. Single keys without modifiers: a hand may be
 * wet, and a foot pedal types one character.
 */
public enum Key {
    SEEN(' ', "Space", "seen"),
    STEP_DONE('\r', "Enter", "step done"),
    BOWL_MOVED('b', "B", "bowl moved"),
    COLD_WATER('k', "K", "cold water"),
    STIR('s', "S", "stir"),
    SEED('g', "G", "seed"),
    DRY('d', "D", "dry"),
    MARK('m', "M", "mark"),
    NOTE('n', "N", "note"),
    UNDO('u', "U", "undo"),
    PROBE_OUT('p', "P", "probe out"),
    OTHER('o', "O", "compare"),
    CHOCOLATE('c', "C", "chocolate"),
    LET_GO('l', "L", "let go"),
    IT_IS_THE_BOWL('i', "I", "it is the bowl"),
    PROVED('v', "V", "sample proved"),
    SLOWER('-', "–", "slower"),
    FASTER('+', "+", "faster"),
    THEME('t', "T", "colours"),
    FULL_SCREEN('f', "F", "full screen"),
    WHY('w', "W", "why"),
    HELP('h', "H", "help"),
    QUIT('q', "Q", "quit");

    private final char character;
    private final String cap;
    private final String word;

    Key(char character, String cap, String word) {
        this.character = character;
        this.cap = cap;
        this.word = word;
    }

    /** What is printed on the key. */
    public String cap() {
        return cap;
    }

    /** What it does, in one or two words. */
    public String word() {
        return word;
    }

    /**
     * Whether it stands in the row of keys. The rare one, which nobody should brush by accident, is told by the help;
     * training has keys of its own in the place of those that are of no use there.
     */
    public boolean isInTheRow(Kitchen kitchen) {
        return switch (this) {
            case LET_GO, IT_IS_THE_BOWL, PROVED -> false;
            case COLD_WATER, STIR, SEED, DRY -> kitchen == Kitchen.TRAINING;
            case MARK, NOTE, OTHER, CHOCOLATE -> kitchen != Kitchen.TRAINING;
            case SLOWER, FASTER -> kitchen != Kitchen.REAL;
            case SEEN, STEP_DONE, BOWL_MOVED, UNDO, PROBE_OUT, WHY, THEME, FULL_SCREEN, HELP, QUIT -> true;
        };
    }

    /** Whether it changes only how the window looks. */
    public boolean changesLook() {
        return this == THEME || this == FULL_SCREEN;
    }

    /** The key that types this character, upper or lower case; {@code =} counts as {@code +} without its shift. */
    public static Optional<Key> typed(char character) {
        char wanted = Character.toLowerCase(character);
        if (wanted == '\n') wanted = '\r';
        if (wanted == '=') wanted = '+';
        if (wanted == '_') wanted = '-';
        if (wanted == '?') wanted = 'h';
        for (Key key : values()) if (key.character == wanted) return Optional.of(key);
        return Optional.empty();
    }
}
