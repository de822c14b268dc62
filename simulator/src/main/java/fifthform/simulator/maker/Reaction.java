package fifthform.simulator.maker;

import java.time.Duration;
import java.util.SplittableRandom;

/**
 * How long somebody takes to act. Reaction times are commonly described by a log-normal distribution (human-factors
 * textbooks, from memory); the median of some seconds, hands full of chocolate, is a guess.
 */
final class Reaction {
    private static final double LONGEST_SECONDS = 60;

    private final double medianSeconds;
    private final double spread;
    private final SplittableRandom random;

    Reaction(Habits habits, SplittableRandom random) {
        medianSeconds = habits.reaction().toMillis() / 1000.0;
        spread = habits.reactionSpread();
        this.random = random;
    }

    /** The next delay. */
    Duration draw() {
        double seconds = medianSeconds * StrictMath.exp(spread * StandardNormal.draw(random));
        return Duration.ofMillis(Math.round(1000 * Math.min(LONGEST_SECONDS, seconds)));
    }
}
