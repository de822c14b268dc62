package fifthform.curves.recipe;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.util.Objects;

/**
 * What a phase aims for.
 *
 * @param range where the chocolate should be, °C
 * @param dwell how long it should be there; zero where only arriving counts
 */
public record PhaseTarget(CelsiusRange range, Duration dwell) {
    public PhaseTarget {
        Objects.requireNonNull(range, "range");
        Require.notNegative(dwell, "dwell");
    }
}
