package fifthform.curves.setup;

import java.util.Objects;
import java.util.Optional;

/** What a batch begins with. */
public sealed interface Beginning {
    /** Chocolate of which nothing is kept: it is melted fully, cooled, and warmed again. */
    record Whole() implements Beginning {}

    /**
     * Bars of an earlier batch that failed, melted together. What bloomed holds form VI, so nothing counts as melted before
     * it has been plainly hot.
     *
     * @param session the name of that batch's session; not blank
     */
    record Again(String session) implements Beginning {
        public Again {
            Objects.requireNonNull(session, "session");
            if (session.isBlank()) throw new IllegalArgumentException("session must not be blank");
        }
    }

    /** Chocolate that is in temper, as bars or kept warm from an earlier pour: it is warmed, and never melted out. */
    record InTemper() implements Beginning {}

    /** The usual one. */
    Beginning WHOLE = new Whole();

    /** Whether the crystals of before are to be kept. */
    default boolean isInTemper() {
        return this instanceof InTemper;
    }

    /** The word in answers to scripts: {@code whole}, {@code again} or {@code in-temper}. */
    default String word() {
        if (isInTemper()) return "in-temper";
        return again().isPresent() ? "again" : "whole";
    }

    /** The batch whose bars these are. */
    default Optional<String> again() {
        return this instanceof Again bars ? Optional.of(bars.session()) : Optional.empty();
    }
}
