package fifthform.simulator.scenario;

import java.util.Optional;

/** The words a scenario says; each must stand in the file, adapter, faults and interruptions excepted. */
enum Wording {
    /** That it is invented; without this no scenario is accepted. */
    DEMO("demo"),
    TITLE("title"),
    ABOUT("about"),
    CHOCOLATE("chocolate"),
    BOWL("bowl"),
    MAKER("maker"),
    /** What the adapter speaks, as {@code --talk} has it; may be missing. */
    ADAPTER("adapter"),
    /** May be missing, or stand several times. */
    FAULT("fault"),
    /** May be missing, or stand several times. */
    INTERRUPTED("interrupted");

    private final String word;

    Wording(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    /** Whether it may be missing, or stand several times. */
    boolean anyNumber() {
        return this == FAULT || this == INTERRUPTED;
    }

    boolean mayBeMissing() {
        return anyNumber() || this == ADAPTER;
    }

    static Optional<Wording> fromWord(String word) {
        for (Wording wording : values()) if (wording.word.equals(word)) return Optional.of(wording);
        return Optional.empty();
    }
}
