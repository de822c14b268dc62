package fifthform.simulator.maker;

import java.util.SplittableRandom;

/**
 * Chance as a value: the same luck draws the same number, and the luck {@link #after} it the next. Whoever keeps it can
 * go back to any moment. The numbers are those of {@link SplittableRandom}.
 *
 * @param seed any number
 */
public record Luck(long seed) {
    /** How far {@link SplittableRandom} moves on for each number it gives. */
    private static final long STRIDE = 0x9e3779b97f4a7c15L;
    /** Keeps branches off the stride above. Any odd number would do; this one is our own. */
    private static final long BRANCH = 0x5851f42d4c957f2dL;

    /** Evenly between 0 and 1, 1 excluded. */
    public double uniform() {
        return new SplittableRandom(seed).nextDouble();
    }

    /** Normally distributed, mean 0, standard deviation 1. */
    public double normal() {
        return StandardNormal.draw(new SplittableRandom(seed));
    }

    /** Exponentially distributed: the wait for something that comes at any moment alike. */
    public double exponential(double mean) {
        return -mean * StrictMath.log(1 - uniform());
    }

    /** The luck of the next draw; no draw takes more than two numbers. */
    public Luck after() {
        return new Luck(seed + 2 * STRIDE);
    }

    /** Luck of its own for a part, so that what one part draws never changes what another does. */
    public Luck branch(long part) {
        return new Luck(
                new SplittableRandom(seed ^ (BRANCH * (part + 1))).split().nextLong());
    }
}
