package fifthform.probe;

import java.util.Objects;
import java.util.OptionalDouble;

/** What some of an adapter's bytes mean. */
public sealed interface Signal {
    /** Calls the method for this kind. */
    <R> R fold(Cases<R> cases);

    /** One answer for each kind of signal. */
    interface Cases<R> {
        R measured(Measured signal);

        R openCircuit(OpenCircuit signal);

        R shorted(Shorted signal);

        R outOfRange(OutOfRange signal);

        R aside(Aside signal);

        R unreadable(Unreadable signal);
    }

    /**
     * A temperature.
     *
     * @param channel the adapter's channel, 0 for the first
     * @param tipCelsius at the tip, rounded to a millionth of a kelvin; −20 to 150 °C
     * @param junctionCelsius of the cold junction, °C, where told
     * @param emfMillivolts thermo-EMF, mV, where told
     * @param resolutionKelvin the step of the number as written, above 0 and at most 20 K
     */
    record Measured(
            int channel,
            double tipCelsius,
            OptionalDouble junctionCelsius,
            OptionalDouble emfMillivolts,
            double resolutionKelvin)
            implements Signal {
        public Measured {
            Objects.requireNonNull(junctionCelsius, "junctionCelsius");
            Objects.requireNonNull(emfMillivolts, "emfMillivolts");
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.measured(this);
        }
    }

    /** The thermocouple's circuit is open. */
    record OpenCircuit(int channel) implements Signal {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.openCircuit(this);
        }
    }

    /** The thermocouple touches ground or supply. */
    record Shorted(int channel) implements Signal {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.shorted(this);
        }
    }

    /** A number that no kitchen has. */
    record OutOfRange(int channel, double celsius) implements Signal {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.outOfRange(this);
        }
    }

    /** That many bytes were understood and tell no temperature: an echo of our own question, a refusal, a name. */
    record Aside(int bytes) implements Signal {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.aside(this);
        }
    }

    /** That many bytes meant nothing. */
    record Unreadable(int bytes) implements Signal {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.unreadable(this);
        }
    }
}
