package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one frame says.
 *
 * @param state whether the converter itself trusts its number
 * @param tipCelsius °C; for a frame that is out of range the number that is
 * @param junctionCelsius °C, where the chip tells it
 * @param stepKelvin worth of the last bit, K
 */
record ChipReading(State state, double tipCelsius, OptionalDouble junctionCelsius, double stepKelvin) {
    enum State {
        TEMPERATURE,
        OPEN,
        SHORTED,
        OUT_OF_RANGE
    }

    ChipReading {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(junctionCelsius, "junctionCelsius");
    }

    boolean isTemperature() {
        return state == State.TEMPERATURE;
    }

    boolean isOfAKitchen() {
        return isTemperature() && Temperatures.isOfAKitchen(tipCelsius);
    }

    /** Zero at the tip and, where it is told, at the junction: also what a line without a converter says. */
    boolean isZero() {
        return isTemperature() && tipCelsius == 0 && junctionCelsius.orElse(0) == 0;
    }

    Signal signal(int channel) {
        return switch (state) {
            case TEMPERATURE ->
                Temperatures.tip(channel, tipCelsius, junctionCelsius, OptionalDouble.empty(), stepKelvin);
            case OPEN -> new Signal.OpenCircuit(channel);
            case SHORTED -> new Signal.Shorted(channel);
            case OUT_OF_RANGE -> new Signal.OutOfRange(channel, tipCelsius);
        };
    }
}
