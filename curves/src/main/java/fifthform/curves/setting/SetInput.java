package fifthform.curves.setting;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;

/** Everything that watching bars set, or watching their store, may learn, each with its time. */
public sealed interface SetInput {
    Instant at();

    /**
     * A reading beside the moulds or the bars.
     *
     * @param celsius −40 to 150 °C
     */
    record Reading(Instant at, double celsius) implements SetInput {
        public Reading {
            Objects.requireNonNull(at, "at");
            Require.within(celsius, -40, 150, "celsius");
        }
    }

    /** It is later. */
    record Passed(Instant at) implements SetInput {
        public Passed {
            Objects.requireNonNull(at, "at");
        }
    }

    /** The maker said something; of a store there is nothing to say. */
    record Said(Instant at, Act act) implements SetInput {
        public Said {
            Objects.requireNonNull(at, "at");
            Objects.requireNonNull(act, "act");
        }
    }

    /** What the maker says. */
    enum Act {
        /** The bars pull away from the mould all over: no dark, wet-looking patches through it. */
        PULLS_AWAY,
        /** The moulds came out of the cold. */
        TAKEN_OUT
    }
}
