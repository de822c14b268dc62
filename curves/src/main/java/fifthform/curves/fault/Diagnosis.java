package fifthform.curves.fault;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What came of a search for the cause.
 *
 * @param word how far it can be said
 * @param suspects all causes, the likeliest first
 * @param fine how likely it is that nothing is wrong, 0 to 1
 * @param question what the maker could say that would help most; empty where nothing would
 */
public record Diagnosis(Word word, List<Suspect> suspects, double fine, Optional<Clue> question) {
    /** How far it can be said. */
    public enum Word {
        /** Nothing was seen on the bars yet. */
        NOT_LOOKED,
        /** The bars are good: no cause is looked for. */
        BARS_ARE_GOOD,
        /** One weak sign, which good bars have as well: no cause is claimed. */
        WEAK,
        /** Something is on them that is no fault of this kind: it grows. */
        NOT_FOR_EATING,
        /** One cause stands out. */
        LIKELY,
        /** Some are possible, none stands out. */
        OPEN
    }

    public Diagnosis {
        Objects.requireNonNull(word, "word");
        suspects = List.copyOf(suspects);
        Objects.requireNonNull(question, "question");
    }

    /** The cause that is claimed; empty where none is. */
    public Optional<Suspect> claimed() {
        return word == Word.LIKELY ? Optional.of(suspects.get(0)) : Optional.empty();
    }
}
