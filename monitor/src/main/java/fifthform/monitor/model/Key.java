package fifthform.monitor.model;

import fifthform.monitor.model.WatchPicture.Kitchen;
import fifthform.monitor.settings.Stroke;
import fifthform.monitor.texts.KeyText;
import java.util.Locale;
import java.util.Optional;

/**
 * What one press means on every screen, with the key that usually says it. Single keys without modifiers: a hand may be
 * wet, and a foot pedal types one character. The maker may give each another key, see {@link KeyMap}.
 */
public enum Key {
    SEEN("space"),
    STEP_DONE("enter"),
    BOWL_MOVED("b"),
    COLD_WATER("k"),
    STIR("s"),
    SEED("g"),
    DRY("d"),
    MARK("m"),
    NOTE("n"),
    UNDO("u"),
    PROBE_OUT("p"),
    OTHER("o"),
    CHOCOLATE("c"),
    SET_ASIDE("a"),
    LET_GO("l"),
    IT_IS_THE_BOWL("i"),
    PROVED("v"),
    SLOWER("-"),
    FASTER("+"),
    THEME("t"),
    FULL_SCREEN("f"),
    EARLIER("left"),
    LATER("right"),
    NOW("end"),
    WHY("w"),
    HELP("h"),
    QUIT("q");

    private final Stroke usual;

    Key(String usual) {
        this.usual = new Stroke(usual);
    }

    /** The act of this name: {@code step-done}. */
    public static Optional<Key> named(String id) {
        for (Key key : values()) if (key.id().equals(id)) return Optional.of(key);
        return Optional.empty();
    }

    /** The word in files and options: {@code step-done}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The key that says it until the maker chooses another. */
    public Stroke usual() {
        return usual;
    }

    /** What it does, in one or two words. */
    public String word() {
        return KeyText.valueOf(name()).say();
    }

    /**
     * Whether it always stands in the row of keys. The rare one, which nobody should brush by accident, is told by the help
     * and stands there only while it is asked for, see {@link WatchPicture#isInTheRow}; training has keys of its own in the
     * place of those that are of no use there.
     */
    public boolean isInTheRow(Kitchen kitchen) {
        return switch (this) {
            case SET_ASIDE, LET_GO, IT_IS_THE_BOWL, PROVED, EARLIER, LATER, NOW -> false;
            case COLD_WATER, STIR, SEED, DRY -> kitchen == Kitchen.TRAINING;
            case MARK, NOTE, OTHER, CHOCOLATE -> kitchen != Kitchen.TRAINING;
            case SLOWER, FASTER -> kitchen != Kitchen.REAL;
            case SEEN, STEP_DONE, BOWL_MOVED, UNDO, PROBE_OUT, WHY, THEME, FULL_SCREEN, HELP, QUIT -> true;
        };
    }
}
