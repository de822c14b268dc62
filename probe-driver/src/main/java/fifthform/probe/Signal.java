package fifthform.probe;

import fifthform.curves.check.Require;
import fifthform.curves.input.Sample;
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
        /** No adapter that is of use at a bowl has a coarser step, K. */
        public static final double COARSEST_KELVIN = 20;

        public Measured {
            Require.within(channel, 0, Integer.MAX_VALUE, "channel");
            Require.within(tipCelsius, Sample.LOWEST_CELSIUS, Sample.HIGHEST_CELSIUS, "tipCelsius");
            Require.within(resolutionKelvin, Double.MIN_NORMAL, COARSEST_KELVIN, "resolutionKelvin");
            Objects.requireNonNull(junctionCelsius, "junctionCelsius");
            Objects.requireNonNull(emfMillivolts, "emfMillivolts");
        }

        /**
         * What the last digit leaves to doubt, K: the resolution is the width of a rectangular distribution, so its standard
         * uncertainty is width/√12 (JCGM 100:2008, F.2.2.1).
         */
        public double resolutionSigmaKelvin() {
            return resolutionKelvin / Math.sqrt(12);
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
