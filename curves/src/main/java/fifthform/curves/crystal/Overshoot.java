package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One stay above the recipe's warning temperature, and what it left alive. The alarms rest on the temperatures alone; this
 * is the verdict afterwards.
 *
 * @param since when it began
 * @param until when it was over; empty while it lasts
 * @param highestCelsius hottest reading in it, °C
 * @param above time above the warning temperature
 * @param before the seed when it began
 * @param left the seed at the latest moment of it
 * @param lostAt when the best guess of the seed fell below what a temper needs; empty where it did not
 */
public record Overshoot(
        Instant since,
        Optional<Instant> until,
        double highestCelsius,
        Duration above,
        SeedRange before,
        SeedRange left,
        Optional<Instant> lostAt) {
    public Overshoot {
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(until, "until");
        Require.finite(highestCelsius, "highestCelsius");
        Require.notNegative(above, "above");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(lostAt, "lostAt");
    }

    /** Begins now. */
    static Overshoot begin(Instant now, double celsius, SeedRange seed) {
        return new Overshoot(now, Optional.empty(), celsius, Duration.ZERO, seed, seed, Optional.empty());
    }

    /** A second later, still above. */
    Overshoot going(Instant now, double celsius, SeedRange seed) {
        boolean had = before.middle() >= Copies.LEAST_SEED;
        boolean lost = lostAt.isEmpty() && had && seed.middle() < Copies.LEAST_SEED;
        return new Overshoot(
                since,
                Optional.empty(),
                Math.max(highestCelsius, celsius),
                above.plusSeconds(1),
                before,
                seed,
                lost ? Optional.of(now) : lostAt);
    }

    /** Below again. */
    Overshoot over(Instant now) {
        return new Overshoot(since, Optional.of(now), highestCelsius, above, before, left, lostAt);
    }

    /** Best guess of the share that it left alive, 0 to 1; 1 where there was nothing to lose. */
    public double leftFraction() {
        return before.middle() <= 0 ? 1 : Math.min(1, left.middle() / before.middle());
    }
}
