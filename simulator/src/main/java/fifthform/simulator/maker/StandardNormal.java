package fifthform.simulator.maker;

import java.util.SplittableRandom;

/** Normal deviates from a {@link SplittableRandom}, the same bits on every machine. */
public final class StandardNormal {
    private StandardNormal() {}

    /** Mean 0, standard deviation 1. Source: Box and Muller, Annals of Mathematical Statistics 29 (1958) 610. */
    public static double draw(SplittableRandom random) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        return radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }
}
