package fifthform.simulator.device;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;

/**
 * A trouble that comes and goes at a moment of the batch, not of the clock: makers differ in their pace.
 *
 * @param trouble what is wrong
 * @param sinceFirst counted from when the bowl first stands there; empty: from the start
 * @param after how long after that it begins
 * @param lasting how long it lasts
 */
public record PlannedFault(Trouble trouble, Optional<Spot> sinceFirst, Duration after, Duration lasting) {
    public PlannedFault {
        Objects.requireNonNull(trouble, "trouble");
        Objects.requireNonNull(sinceFirst, "sinceFirst");
        Require.notNegative(after, "after");
        Require.notNegative(lasting, "lasting");
    }
}
