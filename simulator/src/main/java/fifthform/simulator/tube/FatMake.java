package fifthform.simulator.tube;

import fifthform.curves.check.Require;
import fifthform.simulator.maker.StandardNormal;
import java.util.SplittableRandom;

/**
 * How this fat differs from the one that the reference tables describe. Every batch of butter has one of its own, so what
 * is judged by the tables' constants is judged wrong by as much as these say.
 *
 * @param milkFatFraction share of milk fat in all fat, 0 to 0.25
 * @param stableShiftKelvin form V grows and melts this much warmer than in the tables, −1.5 to 1.5 K
 * @param unstableShiftKelvin the same for II and IV, −1.5 to 1.5 K
 * @param stableGrowth pace of form V, times that of the tables, 0.5 to 2
 * @param unstableGrowth pace of II and IV, the same, 0.5 to 2
 * @param nucleation how readily II and IV begin, the same, 0.2 to 5
 * @param heat heat of crystallising, the same, 0.8 to 1.2
 * @param seedsPerMass number measure of the seed over its mass, 0.01 to 0.2; 0.055 in ordinary temper
 */
public record FatMake(
        double milkFatFraction,
        double stableShiftKelvin,
        double unstableShiftKelvin,
        double stableGrowth,
        double unstableGrowth,
        double nucleation,
        double heat,
        double seedsPerMass) {
    /** The fat of the tables. */
    public static final FatMake OF_THE_TABLES = new FatMake(0, 0, 0, 1, 1, 1, 1, 0.055);

    public FatMake {
        Require.within(milkFatFraction, 0, 0.25, "milkFatFraction");
        Require.within(stableShiftKelvin, -1.5, 1.5, "stableShiftKelvin");
        Require.within(unstableShiftKelvin, -1.5, 1.5, "unstableShiftKelvin");
        Require.within(stableGrowth, 0.5, 2, "stableGrowth");
        Require.within(unstableGrowth, 0.5, 2, "unstableGrowth");
        Require.within(nucleation, 0.2, 5, "nucleation");
        Require.within(heat, 0.8, 1.2, "heat");
        Require.within(seedsPerMass, 0.01, 0.2, "seedsPerMass");
    }

    /**
     * A fat as chance has it. The spreads are ours, without a source: they are about half of what the tables' own limits of
     * knowledge allow, since those are meant for any fat and any recipe, and one maker's chocolates are nearer to each
     * other.
     */
    public static FatMake drawn(double milkFatFraction, SplittableRandom random) {
        return new FatMake(
                milkFatFraction,
                normal(random, 0, 0.25, 0.75),
                normal(random, 0, 0.4, 1.2),
                factor(random, 0.06, 0.2),
                factor(random, 0.15, 0.45),
                factor(random, 0.4, 1.2),
                factor(random, 0.03, 0.09),
                0.055 * factor(random, 0.2, 0.6));
    }

    /** The same fat from another bowl: its seeds are of another size. */
    public FatMake withSeedsPerMass(double other) {
        return new FatMake(
                milkFatFraction,
                stableShiftKelvin,
                unstableShiftKelvin,
                stableGrowth,
                unstableGrowth,
                nucleation,
                heat,
                other);
    }

    private static double factor(SplittableRandom random, double sigma, double most) {
        return StrictMath.exp(normal(random, 0, sigma, most));
    }

    private static double normal(SplittableRandom random, double middle, double sigma, double most) {
        double away = sigma * StandardNormal.draw(random);
        return middle + Math.max(-most, Math.min(most, away));
    }
}
