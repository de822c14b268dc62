package fifthform.curves.input;

import fifthform.curves.check.Require;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.thermocouple.Sensor;
import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One temperature, as the wire said it; corrections stand in the set-up and are applied by the engine, so that a
 * replay can apply others.
 *
 * @param at when the last byte of the measurement arrived
 * @param probe which probe
 * @param tipCelsius temperature at the tip, −20 to 150 °C; what lies outside is a {@link ProbeFault}
 * @param sigmaKelvin standard uncertainty from the resolution of the wire, above 0 and at most 20 K
 * @param junctionCelsius temperature of the cold junction, °C, where the adapter tells it
 * @param emfMillivolts thermo-EMF, mV, where the adapter tells it
 */
public record Sample(
        Instant at,
        ProbeId probe,
        double tipCelsius,
        double sigmaKelvin,
        OptionalDouble junctionCelsius,
        OptionalDouble emfMillivolts)
        implements Input {
    /** Lowest temperature a reading of this kitchen can have, °C. */
    public static final double LOWEST_CELSIUS = -20;
    /** Highest temperature a reading of this kitchen can have, °C. */
    public static final double HIGHEST_CELSIUS = 150;

    public Sample {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(probe, "probe");
        Require.within(tipCelsius, LOWEST_CELSIUS, HIGHEST_CELSIUS, "tipCelsius");
        Require.within(sigmaKelvin, Double.MIN_NORMAL, 20, "sigmaKelvin");
        Objects.requireNonNull(junctionCelsius, "junctionCelsius");
        Objects.requireNonNull(emfMillivolts, "emfMillivolts");
    }

    /** The same reading as heard at another time. */
    public Sample heardAt(Instant heard) {
        return new Sample(heard, probe, tipCelsius, sigmaKelvin, junctionCelsius, emfMillivolts);
    }

    /**
     * The same reading with what {@code sensor} knows of its converter's arithmetic undone ({@link Sensor#tipCelsius}). At
     * the ends of the range, where a correction would leave it, the reading stays within.
     */
    public Sample linearised(Sensor sensor) {
        double celsius = sensor.tipCelsius(tipCelsius, junctionCelsius, emfMillivolts);
        if (celsius == tipCelsius) return this;
        double within = Math.min(HIGHEST_CELSIUS, Math.max(LOWEST_CELSIUS, celsius));
        return new Sample(at, probe, within, sigmaKelvin, junctionCelsius, emfMillivolts);
    }

    /** The same reading, its standard uncertainty not less than this, K. */
    public Sample atLeastUnsure(double leastSigmaKelvin) {
        return leastSigmaKelvin <= sigmaKelvin
                ? this
                : new Sample(at, probe, tipCelsius, leastSigmaKelvin, junctionCelsius, emfMillivolts);
    }

    @Override
    public <R> R fold(Cases<R> cases) {
        return cases.sample(this);
    }
}
