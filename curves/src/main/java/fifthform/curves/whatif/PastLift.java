package fifthform.curves.whatif;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.Objects;

/**
 * One lift of a past batch: the bowl left some water for the table.
 *
 * @param number 1 for the first of the batch, then one more each
 * @param enteredAt when it came into that water
 * @param at when it left it
 * @param from the water it left, never {@link Place#TABLE}
 * @param evidence whether a key told so or the curve shows it; what the curve shows may be some seconds off
 * @param phase the phase of the batch then
 * @param celsius the chocolate then, °C, as it was estimated
 */
public record PastLift(
        int number, Instant enteredAt, Instant at, Place from, Evidence evidence, Phase phase, double celsius) {
    public PastLift {
        Require.within(number, 1, 1e6, "number");
        Objects.requireNonNull(enteredAt, "enteredAt");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(phase, "phase");
        Require.finite(celsius, "celsius");
    }
}
