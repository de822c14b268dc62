package fifthform.simulator.maker;

import java.time.Duration;
import java.util.Objects;

/**
 * How long somebody takes to act. Reaction times are commonly described by a log-normal distribution (human-factors
 * textbooks, from memory); the median of some seconds, hands full of chocolate, is a guess.
 *
 * @param medianSeconds half of all reactions are quicker
 * @param spread standard deviation of the natural logarithm
 * @param luck for the next delay
 */
record Reaction(double medianSeconds, double spread, Luck luck) {
    private static final double LONGEST_SECONDS = 60;

    Reaction {
        Objects.requireNonNull(luck, "luck");
    }

    static Reaction of(Habits habits, Luck luck) {
        return new Reaction(habits.reaction().toMillis() / 1000.0, habits.reactionSpread(), luck);
    }

    /** The next delay. */
    Duration delay() {
        double seconds = medianSeconds * StrictMath.exp(spread * luck.normal());
        return Duration.ofMillis(Math.round(1000 * Math.min(LONGEST_SECONDS, seconds)));
    }

    /** Once that delay has been taken. */
    Reaction after() {
        return new Reaction(medianSeconds, spread, luck.after());
    }
}
