package fifthform.simulator.scenario;

import java.util.Optional;

/** The words a scenario says; each must stand in the file, faults excepted. */
enum Wording {
    /** That it is invented; without this no scenario is accepted. */
    DEMO("demo"),
    TITLE("title"),
    ABOUT("about"),
    CHOCOLATE("chocolate"),
    BOWL("bowl"),
    MAKER("maker"),
    /** May be missing, or stand several times. */
    FAULT("fault");

    private final String word;

    Wording(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    static Optional<Wording> fromWord(String word) {
        for (Wording wording : values()) if (wording.word.equals(word)) return Optional.of(wording);
        return Optional.empty();
    }
}
