package fifthform.monitor.terminal;

import fifthform.monitor.model.Key;
import java.util.Optional;

/**
 * Tells keys from the rest of what a terminal sends. An arrow key arrives as escape, bracket and a letter: taken one
 * by one that letter would move the bowl.
 */
final class Keystrokes {
    /** Control and C, which arrives as a letter once the terminal no longer turns it into a signal. */
    static final int STOP = 3;

    private static final int ESCAPE = 27;

    private enum Within {
        NOTHING,
        ESCAPED,
        SEQUENCE
    }

    private Within within = Within.NOTHING;

    /** The key that ends with this letter. */
    Optional<Key> letter(int letter) {
        switch (within) {
            case NOTHING -> {
                if (letter == ESCAPE) within = Within.ESCAPED;
                else return Key.typed((char) letter);
            }
            case ESCAPED -> within = letter == '[' || letter == 'O' ? Within.SEQUENCE : Within.NOTHING;
            case SEQUENCE -> {
                if (letter >= '@' && letter <= '~') within = Within.NOTHING;
            }
        }
        return Optional.empty();
    }

    /** Whether the next letter stands alone, so that it may be part of a number. */
    boolean expectsNothing() {
        return within == Within.NOTHING;
    }

    /**
     * No letter for a while: a sequence comes in one piece, so what comes next stands alone.
     *
     * @return whether the escape key was pressed by itself
     */
    boolean pause() {
        boolean escape = within == Within.ESCAPED;
        within = Within.NOTHING;
        return escape;
    }
}
