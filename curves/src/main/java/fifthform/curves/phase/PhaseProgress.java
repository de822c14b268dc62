package fifthform.curves.phase;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which phase the batch is in and how far it has come.
 *
 * @param phase the phase
 * @param since when it began
 * @param evidence how that is known
 * @param highestCelsius highest temperature in it so far
 * @param lowestCelsius lowest temperature in it so far
 * @param dwell time spent in the phase's target range so far
 * @param settledSince since when the temperature has hardly moved near the working range
 */
public record PhaseProgress(
        Phase phase,
        Instant since,
        Evidence evidence,
        OptionalDouble highestCelsius,
        OptionalDouble lowestCelsius,
        Duration dwell,
        Optional<Instant> settledSince) {
    public PhaseProgress {
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(highestCelsius, "highestCelsius");
        Objects.requireNonNull(lowestCelsius, "lowestCelsius");
        Require.notNegative(dwell, "dwell");
        Objects.requireNonNull(settledSince, "settledSince");
    }

    /** The beginning of a phase. */
    public static PhaseProgress begin(Phase phase, Instant at, Evidence evidence) {
        return new PhaseProgress(
                phase, at, evidence, OptionalDouble.empty(), OptionalDouble.empty(), Duration.ZERO, Optional.empty());
    }

    /** The phase with one more moment at {@code celsius}, of which {@code inRange} was spent in the target range. */
    PhaseProgress with(double celsius, Duration inRange, Optional<Instant> settled) {
        return new PhaseProgress(
                phase,
                since,
                evidence,
                OptionalDouble.of(Math.max(celsius, highestCelsius.orElse(celsius))),
                OptionalDouble.of(Math.min(celsius, lowestCelsius.orElse(celsius))),
                dwell.plus(inRange),
                settled);
    }
}
