package fifthform.curves.review;

import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.Objects;

/** A phase and when the batch was in it. */
public record PhaseSpan(Phase phase, Instant from, Instant to) {
    public PhaseSpan {
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}
