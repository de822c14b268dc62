package fifthform.simulator.maker;

import java.util.Objects;

/** Draws one thing after the other from one luck, where what is drawn becomes part of a plan. For one thread. */
public final class Dice {
    private Luck luck;

    /** The first draw is with this luck. */
    public Dice(Luck luck) {
        this.luck = Objects.requireNonNull(luck, "luck");
    }

    /** Evenly between two numbers. */
    public double between(double low, double high) {
        return low + (high - low) * next();
    }

    /** Between two numbers above 0, evenly in its logarithm. */
    public double logBetween(double low, double high) {
        return low * StrictMath.exp(next() * StrictMath.log(high / low));
    }

    /** Whether something happens that does so in this share of all cases. */
    public boolean happens(double share) {
        return next() < share;
    }

    /** From 0 to {@code count - 1}, all alike. */
    public int among(int count) {
        return (int) (next() * count);
    }

    /** Mean 0, standard deviation 1. */
    public double normal() {
        double drawn = luck.normal();
        luck = luck.after();
        return drawn;
    }

    private double next() {
        double drawn = luck.uniform();
        luck = luck.after();
        return drawn;
    }
}
