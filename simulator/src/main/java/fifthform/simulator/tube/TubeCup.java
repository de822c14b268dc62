package fifthform.simulator.tube;

import fifthform.curves.check.Require;
import java.util.SplittableRandom;

/**
 * A cup, the probe that hangs in it, and how they are held. Resistances are shares of the whole way from the axis to the
 * bath; {@link Tube} scales them until the bare cup has its time constant.
 *
 * @param tauMinutes time constant at the axis with {@code usualGrams} in it and no crystals, 1 to 8 min
 * @param usualGrams mass it is meant for, 4 to 30 g
 * @param withinShare how much of the resistance lies within the chocolate, 0.05 to 0.9
 * @param filmShare how much lies between cup and bath, 0.05 to 0.9
 * @param coreShare mass of the core over that of the sample, 0.2 to 0.6
 * @param wallHeat heat capacity of cup and holder over that of the usual sample, 0 to 0.5
 * @param probeHeat heat capacity of the probe over that of the usual sample, 0 to 0.3
 * @param probeLagSeconds how late the probe is in chocolate, 0.5 to 15 s
 * @param offAxis how far towards the shell the tip hangs, 0 on the axis to 1
 */
public record TubeCup(
        double tauMinutes,
        double usualGrams,
        double withinShare,
        double filmShare,
        double coreShare,
        double wallHeat,
        double probeHeat,
        double probeLagSeconds,
        double offAxis) {
    public TubeCup {
        Require.within(tauMinutes, 1, 8, "tauMinutes");
        Require.within(usualGrams, 4, 30, "usualGrams");
        Require.within(withinShare, 0.05, 0.9, "withinShare");
        Require.within(filmShare, 0.05, 0.9, "filmShare");
        Require.within(withinShare + filmShare, 0.1, 0.98, "withinShare + filmShare");
        Require.within(coreShare, 0.2, 0.6, "coreShare");
        Require.within(wallHeat, 0, 0.5, "wallHeat");
        Require.within(probeHeat, 0, 0.3, "probeHeat");
        Require.within(probeLagSeconds, 0.5, 15, "probeLagSeconds");
        Require.within(offAxis, 0, 1, "offAxis");
    }

    /** A cup as chance has it: 7 to 20 g, thin metal or foil. The spreads are ours, without a source. */
    public static TubeCup drawn(SplittableRandom random) {
        double grams = between(random, 7, 20);
        // Half sphere of 12 g: 3.9 min where conduction alone limits; walls and film make it slower or the cup flatter.
        double tau = 3.5 * StrictMath.pow(grams / 12, 2.0 / 3) * between(random, 0.75, 1.3);
        // Stirred ice water takes heat off faster than chocolate conducts it, so most of the way lies within.
        double within = between(random, 0.2, 0.45);
        return new TubeCup(
                Math.max(2.2, Math.min(5.5, tau)),
                grams,
                within,
                between(random, 0.4, 0.8) * (1 - within),
                between(random, 0.35, 0.55),
                between(random, 0.03, 0.25),
                between(random, 0.02, 0.06),
                between(random, 2, 6),
                between(random, 0, 0.3));
    }

    /** The same with the tip hung elsewhere. */
    TubeCup withOffAxis(double other) {
        return new TubeCup(
                tauMinutes,
                usualGrams,
                withinShare,
                filmShare,
                coreShare,
                wallHeat,
                probeHeat,
                probeLagSeconds,
                Math.max(0, Math.min(1, other)));
    }

    static double between(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
