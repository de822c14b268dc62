package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * The fixed beat of one second at which the model goes, whatever the pace of the readings: how far it has been stepped,
 * and the temperature there, on straight lines between readings.
 *
 * @param steppedTo how far the model has gone; never later than the last reading
 * @param celsiusThere temperature at that time, °C
 * @param readAt time of the last reading
 * @param readCelsius the last reading, °C
 */
record Beat(Instant steppedTo, double celsiusThere, Instant readAt, double readCelsius) {
    private static final Duration STEP = Duration.ofSeconds(1);

    Beat {
        Objects.requireNonNull(steppedTo, "steppedTo");
        Require.finite(celsiusThere, "celsiusThere");
        Objects.requireNonNull(readAt, "readAt");
        Require.finite(readCelsius, "readCelsius");
    }

    /** Begins with a reading. */
    static Beat at(Instant at, double celsius) {
        return new Beat(at, celsius, at, celsius);
    }

    /** One step of the model at the temperature of its beginning. */
    interface Stepper {
        void step(double celsius);
    }

    /** Takes all whole seconds up to a reading; one at or before the last reading changes nothing. */
    Beat to(Instant at, double celsius, Stepper stepper) {
        if (!at.isAfter(readAt)) return this;
        Instant stepped = steppedTo;
        double there = celsiusThere;
        while (!stepped.plus(STEP).isAfter(at)) {
            stepper.step(there);
            stepped = stepped.plus(STEP);
            // The end of a step that was due only now lies after the reading before.
            there = between(stepped, at, celsius);
        }
        return new Beat(stepped, there, at, celsius);
    }

    private double between(Instant moment, Instant at, double celsius) {
        double share = seconds(readAt, moment) / seconds(readAt, at);
        return readCelsius + share * (celsius - readCelsius);
    }

    static double seconds(Instant from, Instant to) {
        Duration d = Duration.between(from, to);
        return d.getSeconds() + d.getNano() / 1e9;
    }
}
