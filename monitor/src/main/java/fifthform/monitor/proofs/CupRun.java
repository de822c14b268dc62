package fifthform.monitor.proofs;

import fifthform.curves.check.Require;
import fifthform.curves.proof.Bend;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One cooling of melted chocolate in a cup.
 *
 * @param at when
 * @param tauMinutes time constant, 0.1 to 60 min
 * @param axisExcess how far the axis stays behind, 0 to 10
 * @param bend where it bent without seed
 * @param proof the recording
 */
public record CupRun(Instant at, double tauMinutes, double axisExcess, Optional<Bend> bend, String proof) {
    public CupRun {
        Objects.requireNonNull(at, "at");
        Require.within(tauMinutes, 0.1, 60, "tauMinutes");
        Require.within(axisExcess, 0, 10, "axisExcess");
        Objects.requireNonNull(bend, "bend");
        Objects.requireNonNull(proof, "proof");
    }
}
