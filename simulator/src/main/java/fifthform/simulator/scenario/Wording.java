package fifthform.simulator.scenario;

import java.util.Optional;

/** The words a scenario says. */
enum Wording {
    /** That it is invented; without this no scenario is accepted. */
    DEMO("demo"),
    TITLE("title"),
    ABOUT("about"),
    CHOCOLATE("chocolate"),
    BOWL("bowl"),
    MAKER("maker"),
    /** What the adapter speaks, as {@code --talk} has it. */
    ADAPTER("adapter", Times.AT_MOST_ONCE),
    FAULT("fault", Times.ANY),
    /** What comes between the maker and the batch. */
    INTERRUPTED("interrupted", Times.ANY),
    /** What the hands do on purpose, out of the ordinary. */
    ACT("act", Times.ANY),
    /** How the chocolate is found; solid where the file says nothing. */
    BEGINS("begins", Times.AT_MOST_ONCE),
    /** Which crystals there are: all {@code forms} (usual), or such as {@code melt-once} and never form again. */
    CRYSTALS("crystals", Times.AT_MOST_ONCE),
    /** How the maker wants to be led to the working range: {@code touches} (usual) or {@code one} lift. */
    LIFT("lift", Times.AT_MOST_ONCE),
    /** A planned hold, as {@code 60 min by air}. */
    HELD("held", Times.AT_MOST_ONCE),
    /** Where the hottest of the rewarm should lie. */
    ENDS("ends", Times.AT_MOST_ONCE),
    /** How far the cooling should go. */
    COOLS("cools", Times.AT_MOST_ONCE),
    /** What crystals there should be at the end. */
    TEMPERS("tempers", Times.AT_MOST_ONCE),
    /** What the program should say of it in the end. */
    VERDICT("verdict", Times.AT_MOST_ONCE),
    /** The alarms that must be raised. */
    RAISES("raises", Times.AT_MOST_ONCE),
    /** The alarms that must not be raised. */
    RAISES_NOT("raises not", Times.AT_MOST_ONCE);

    private enum Times {
        ONCE,
        AT_MOST_ONCE,
        ANY
    }

    private final String word;
    private final Times times;

    Wording(String word) {
        this(word, Times.ONCE);
    }

    Wording(String word, Times times) {
        this.word = word;
        this.times = times;
    }

    String word() {
        return word;
    }

    /** Whether every scenario must say it. */
    boolean required() {
        return times == Times.ONCE;
    }

    static Optional<Wording> fromWord(String word) {
        for (Wording wording : values()) if (wording.word.equals(word)) return Optional.of(wording);
        return Optional.empty();
    }
}
