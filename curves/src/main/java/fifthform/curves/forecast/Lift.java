package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.phase.Evidence;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

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
 * @param approach the curve on the way to the lift, steadier than its last moment; empty where too little was seen
 * @param steadyExtremeCelsius furthest mean of some seconds since, °C: noise alone moves it less
 */
public record Lift(
        Instant at,
        double celsius,
        double kelvinPerMinute,
        double rateSigmaKelvinPerMinute,
        Duration stay,
        Evidence evidence,
        double extremeCelsius,
        Optional<Stretch> approach,
        double steadyExtremeCelsius) {
    public Lift {
        Objects.requireNonNull(at, "at");
        Require.finite(celsius, "celsius");
        Require.finite(kelvinPerMinute, "kelvinPerMinute");
        Require.within(rateSigmaKelvinPerMinute, 0, 1e6, "rateSigmaKelvinPerMinute");
        Require.notNegative(stay, "stay");
        Objects.requireNonNull(evidence, "evidence");
        Require.finite(extremeCelsius, "extremeCelsius");
        Objects.requireNonNull(approach, "approach");
        Require.finite(steadyExtremeCelsius, "steadyExtremeCelsius");
    }

    boolean isRising() {
        return kelvinPerMinute > 0;
    }

    /** @param steadyCelsius mean of the last seconds, °C */
    Lift reaching(double reachedCelsius, double steadyCelsius) {
        return new Lift(
                at,
                celsius,
                kelvinPerMinute,
                rateSigmaKelvinPerMinute,
                stay,
                evidence,
                further(extremeCelsius, reachedCelsius),
                approach,
                further(steadyExtremeCelsius, steadyCelsius));
    }

    private double further(double one, double other) {
        return isRising() ? Math.max(one, other) : Math.min(one, other);
    }

    /** From the lift to the furthest point; positive after heat, negative after cold. */
    double coastKelvin() {
        return extremeCelsius - celsius;
    }
}
