package fifthform.monitor.store;

import java.util.Optional;

/** Kinds of journal lines; a reader skips and counts others, for they come from a newer program. */
enum LineKind {
    HEADER("h"),
    SAMPLE("r"),
    FAULT("f"),
    TICK("t"),
    ACTION("a"),
    STORE_TROUBLE("w"),
    EVENT("e"),
    NOTE("n"),
    CHECK("c"),
    CLOSING("z");

    static final String KEY = "k";

    final String letter;

    LineKind(String letter) {
        this.letter = letter;
    }

    static Optional<LineKind> of(String letter) {
        for (LineKind kind : values()) if (kind.letter.equals(letter)) return Optional.of(kind);
        return Optional.empty();
    }
}
