package fifthform.curves.whatif;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.Objects;

/**
 * The bowl came to a place, as it was known at the time.
 *
 * @param at when
 * @param to where
 * @param evidence how that is known
 * @param phase the phase before
 * @param celsius the chocolate then, °C
 */
record Mark(Instant at, Place to, Evidence evidence, Phase phase, double celsius) {
    Mark {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(phase, "phase");
    }

    boolean isTold() {
        return evidence == Evidence.TOLD;
    }
}
