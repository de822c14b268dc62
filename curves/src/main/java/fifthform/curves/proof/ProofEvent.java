package fifthform.curves.proof;

import java.time.Instant;
import java.util.Objects;

/** What came of one input to a proof. */
public sealed interface ProofEvent {
    Instant at();

    /** The sample is in the ice. */
    record Dipped(Instant at, double startCelsius) implements ProofEvent {
        public Dipped {
            Objects.requireNonNull(at, "at");
        }
    }

    /** A bend has been passed; a later, stronger one overrules it. */
    record BendPassed(Instant at, Bend bend) implements ProofEvent {
        public BendPassed {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(bend, "bend");
        }
    }

    /** Enough was read, or nothing more is to be expected. */
    record Ended(Instant at) implements ProofEvent {
        public Ended {
            Objects.requireNonNull(at, "at");
        }
    }
}
