package fifthform.monitor.terminal;

import fifthform.monitor.settings.Stroke;
import java.util.Map;
import java.util.Optional;

/**
 * Tells keys from the rest of what a terminal sends. An arrow key arrives as escape, bracket and a letter: taken one
 * by one that letter would move the bowl.
 */
final class Keystrokes {
    /** Control and C, which arrives as a letter once the terminal no longer turns it into a signal. */
    static final int STOP = 3;

    private static final int ESCAPE = 27;

    /** What stands between bracket and last letter (ECMA-48, and as xterm and the Linux console send it; from memory). */
    private static final Map<String, String> SEQUENCES = Map.ofEntries(
            Map.entry("A", "up"),
            Map.entry("B", "down"),
            Map.entry("C", "right"),
            Map.entry("D", "left"),
            Map.entry("H", "home"),
            Map.entry("F", "end"),
            Map.entry("P", "f1"),
            Map.entry("Q", "f2"),
            Map.entry("R", "f3"),
            Map.entry("S", "f4"),
            Map.entry("1~", "home"),
            Map.entry("2~", "insert"),
            Map.entry("3~", "delete"),
            Map.entry("4~", "end"),
            Map.entry("5~", "page-up"),
            Map.entry("6~", "page-down"),
            Map.entry("11~", "f1"),
            Map.entry("12~", "f2"),
            Map.entry("13~", "f3"),
            Map.entry("14~", "f4"),
            Map.entry("15~", "f5"),
            Map.entry("17~", "f6"),
            Map.entry("18~", "f7"),
            Map.entry("19~", "f8"),
            Map.entry("20~", "f9"),
            Map.entry("21~", "f10"),
            Map.entry("23~", "f11"),
            Map.entry("24~", "f12"));

    private enum Within {
        NOTHING,
        ESCAPED,
        SEQUENCE
    }

    private Within within = Within.NOTHING;
    private final StringBuilder sequence = new StringBuilder();

    /** The key that ends with this letter. */
    Optional<Stroke> letter(int letter) {
        switch (within) {
            case NOTHING -> {
                if (letter == ESCAPE) within = Within.ESCAPED;
                else return Stroke.typed((char) letter);
            }
            case ESCAPED -> {
                within = letter == '[' || letter == 'O' ? Within.SEQUENCE : Within.NOTHING;
                sequence.setLength(0);
            }
            case SEQUENCE -> {
                sequence.append((char) letter);
                if (letter >= '@' && letter <= '~') {
                    within = Within.NOTHING;
                    return Optional.ofNullable(SEQUENCES.get(sequence.toString()))
                            .flatMap(Stroke::named);
                }
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
