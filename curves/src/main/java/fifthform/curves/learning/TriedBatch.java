package fifthform.curves.learning;

import fifthform.curves.check.Require;
import java.util.Objects;

/**
 * A batch whose heat and outcome are both known.
 *
 * @param doseCelsius its heat as one number, °C; see {@link HeatScale}
 * @param outcome how its bars came out
 */
public record TriedBatch(double doseCelsius, Outcome outcome) {
    public TriedBatch {
        Require.within(doseCelsius, -20, 150, "doseCelsius");
        Objects.requireNonNull(outcome, "outcome");
    }
}
