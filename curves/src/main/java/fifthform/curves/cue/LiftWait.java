package fifthform.curves.cue;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * Waiting for the second to lift, out of the warm bath or of the cold water.
 *
 * @param reached the reading at which that second was first found to have come, while it is; one reading alone is not
 *     enough to tell a maker to lift
 * @param countdown what is shown of the time left, while it is shown
 */
public record LiftWait(Optional<Instant> reached, Optional<Countdown> countdown) {
    static final LiftWait NONE = new LiftWait(Optional.empty(), Optional.empty());

    public LiftWait {
        Objects.requireNonNull(reached, "reached");
        Objects.requireNonNull(countdown, "countdown");
    }
}
