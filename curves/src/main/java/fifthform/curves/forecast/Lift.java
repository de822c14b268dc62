package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.phase.Evidence;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * A bowl that has left the water and whose turning point is awaited.
 *
 * @param at when it left
 * @param celsius temperature then, °C
 * @param kelvinPerMinute rate then
 * @param rateSigmaKelvinPerMinute its standard uncertainty
 * @param stay how long it had been in the water
 * @param evidence how it is known that it left
 * @param extremeCelsius furthest temperature since, °C
 */
public record Lift(
        Instant at,
        double celsius,
        double kelvinPerMinute,
        double rateSigmaKelvinPerMinute,
        Duration stay,
        Evidence evidence,
        double extremeCelsius) {
    public Lift {
        Objects.requireNonNull(at, "at");
        Require.finite(celsius, "celsius");
        Require.finite(kelvinPerMinute, "kelvinPerMinute");
        Require.within(rateSigmaKelvinPerMinute, 0, 1e6, "rateSigmaKelvinPerMinute");
        Require.notNegative(stay, "stay");
        Objects.requireNonNull(evidence, "evidence");
        Require.finite(extremeCelsius, "extremeCelsius");
    }

    boolean isRising() {
        return kelvinPerMinute > 0;
    }

    Lift reaching(double reachedCelsius) {
        double extreme =
                isRising() ? Math.max(extremeCelsius, reachedCelsius) : Math.min(extremeCelsius, reachedCelsius);
        return new Lift(at, celsius, kelvinPerMinute, rateSigmaKelvinPerMinute, stay, evidence, extreme);
    }

    /** From the lift to the furthest point; positive after heat, negative after cold. */
    double coastKelvin() {
        return extremeCelsius - celsius;
    }
}
