package fifthform.simulator.bench;

import java.time.Instant;
import java.util.Objects;

/**
 * One lift off warm water and what it led to, in true temperatures of the chocolate.
 *
 * @param at when the bowl left the water
 * @param celsius then, °C
 * @param turnedAt when it was hottest before it went down or back on the water
 * @param turnedCelsius how hot, °C
 */
public record Lift(Instant at, double celsius, Instant turnedAt, double turnedCelsius) {
    public Lift {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(turnedAt, "turnedAt");
    }

    /** How far it went on by itself, K. */
    public double coastKelvin() {
        return turnedCelsius - celsius;
    }
}
