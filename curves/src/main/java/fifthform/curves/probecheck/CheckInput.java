package fifthform.curves.probecheck;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;

/** Everything a check may learn, each with its time. */
public sealed interface CheckInput {
    Instant at();

    /** Calls the method for this kind. */
    <R> R fold(Cases<R> cases);

    /** One answer for each kind. */
    interface Cases<R> {
        R reading(Reading reading);

        R noReading(NoReading noReading);

        R passed(Passed passed);

        R enter(Enter enter);
    }

    /**
     * A reading, uncorrected.
     *
     * @param celsius −20 to 150 °C
     * @param stepSigmaKelvin standard uncertainty by its last digit, K, 0 to 5
     */
    record Reading(Instant at, double celsius, double stepSigmaKelvin) implements CheckInput {
        public Reading {
            Objects.requireNonNull(at, "at");
            Require.within(celsius, -20, 150, "celsius");
            Require.within(stepSigmaKelvin, 0, 5, "stepSigmaKelvin");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.reading(this);
        }
    }

    /** The adapter says that there is no temperature, or what it says cannot be one. */
    record NoReading(Instant at) implements CheckInput {
        public NoReading {
            Objects.requireNonNull(at, "at");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.noReading(this);
        }
    }

    /** It is later. */
    record Passed(Instant at) implements CheckInput {
        public Passed {
            Objects.requireNonNull(at, "at");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.passed(this);
        }
    }

    /** The maker pressed Enter: the tip is in, or take it now. */
    record Enter(Instant at) implements CheckInput {
        public Enter {
            Objects.requireNonNull(at, "at");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.enter(this);
        }
    }
}
