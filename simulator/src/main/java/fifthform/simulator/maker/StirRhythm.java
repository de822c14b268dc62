package fifthform.simulator.maker;

import java.time.Duration;
import java.time.Instant;
import java.util.SplittableRandom;

/**
 * Stirring with pauses: about 45 s of it, then about 15 s without, each drawn from an exponential distribution. A guess
 * of this project (no source).
 */
final class StirRhythm {
    private static final double STIRRING_SECONDS = 45;
    private static final double PAUSE_SECONDS = 15;
    private static final double FULL_VIGOUR_FRACTION = 1;
    private static final double PAUSE_VIGOUR_FRACTION = 0;

    private final SplittableRandom random;
    private Instant until = Instant.MIN;
    private double vigourFraction = PAUSE_VIGOUR_FRACTION;

    StirRhythm(SplittableRandom random) {
        this.random = random;
    }

    /** Takes the spoon up at once, and lets nothing interrupt for this long. */
    void keepOn(Instant at, Duration time) {
        vigourFraction = FULL_VIGOUR_FRACTION;
        until = at.plus(time);
    }

    double vigourFraction(Instant at) {
        if (at.isBefore(until)) return vigourFraction;
        boolean paused = vigourFraction == PAUSE_VIGOUR_FRACTION;
        vigourFraction = paused ? FULL_VIGOUR_FRACTION : PAUSE_VIGOUR_FRACTION;
        until = at.plusMillis(Math.round(1000 * exponential(paused ? STIRRING_SECONDS : PAUSE_SECONDS)));
        return vigourFraction;
    }

    private double exponential(double meanSeconds) {
        return -meanSeconds * StrictMath.log(1 - random.nextDouble());
    }
}
