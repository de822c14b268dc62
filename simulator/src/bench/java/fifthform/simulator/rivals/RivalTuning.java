package fifthform.simulator.rivals;

import fifthform.simulator.bench.Fleet;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.maker.Manner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Tunes the rules of comparison on home kitchens, as the engine's own decisions were, each with the same effort: {@value #DRAWN} draws from its ranges, then
 * {@value #NEAR} steps around the best in shrinking circles, all in the same kitchens. What is made least is the mean distance
 * of the rewarm's highest from the middle of the range (above or below alike, at most 3 K) and a quarter of the mean error of
 * the forecast at the cue (at most 3 K; 3 K where no cue came). Prints {@code rivals/tuned.txt}.
 *
 * <p>{@code -Dtuning.kitchens=120}, {@code -Dfleet=home}, {@code -Dcores=2}.
 */
public final class RivalTuning {
    private static final int DRAWN = 32;
    private static final int NEAR = 32;
    private static final double MOST_KELVIN = 3;
    /** More would buy a smaller error by lifting so early that hardly any coast is left to be wrong about. */
    private static final double ERROR_COUNTS = 0.25;

    private static final double SHRINKING = 0.92;
    private static final long SEED = 77;

    private RivalTuning() {}

    public static void main(String[] arguments) {
        int kitchens = Integer.getInteger("tuning.kitchens", 120);
        int cores = Integer.getInteger("cores", Runtime.getRuntime().availableProcessors());
        String fleet = System.getProperty("fleet", "home");
        Contest contest = new Contest(Fleet.builtIn(fleet), cores);
        List<Ring> rings = contest.each(0, kitchens, k -> new Ring(contest, k));
        System.out.printf(
                Locale.ROOT,
                "# Written by RivalTuning: fleet %s, kitchens 0 to %d, %d trials for each rule.%n"
                        + "# rule = aim above the middle of the range in K, then the rule's own numbers  # its loss, K%n",
                fleet,
                kitchens - 1,
                DRAWN + NEAR);
        for (Tuned tuned : Tuned.values()) tune(contest, rings, tuned);
    }

    private static void tune(Contest contest, List<Ring> rings, Tuned tuned) {
        double[] best = {};
        double least = Double.POSITIVE_INFINITY;
        double circle = 0.3;
        for (int trial = 0; trial < DRAWN + NEAR; trial++) {
            Luck luck = new Luck(SEED).branch(tuned.ordinal()).branch(trial);
            double[] at = trial < DRAWN ? drawn(tuned, luck) : near(tuned, best, circle, luck);
            if (trial >= DRAWN) circle *= SHRINKING;
            double loss = loss(contest, rings, tuned, at);
            if (loss < least) {
                least = loss;
                best = at;
            }
        }
        String numbers = Arrays.stream(best)
                .mapToObj(x -> String.format(Locale.ROOT, "%.4f", x))
                .collect(Collectors.joining(" "));
        System.out.printf(Locale.ROOT, "%s = %s  # %.3f%n", tuned.word(), numbers, least);
    }

    private static double[] drawn(Tuned tuned, Luck luck) {
        List<Tuned.Range> ranges = tuned.ranges();
        double[] at = new double[ranges.size()];
        for (int i = 0; i < at.length; i++) {
            Tuned.Range range = ranges.get(i);
            at[i] = range.low() + (range.high() - range.low()) * luck.branch(i).uniform();
        }
        return at;
    }

    private static double[] near(Tuned tuned, double[] best, double circle, Luck luck) {
        List<Tuned.Range> ranges = tuned.ranges();
        double[] at = best.clone();
        for (int i = 0; i < at.length; i++) {
            Tuned.Range range = ranges.get(i);
            double step = circle * (range.high() - range.low()) * luck.branch(i).normal();
            at[i] = Math.max(range.low(), Math.min(range.high(), at[i] + step));
        }
        return at;
    }

    private static double loss(Contest contest, List<Ring> rings, Tuned tuned, double[] at) {
        List<Double> losses = contest.together(rings, ring -> loss(ring, tuned, at));
        return losses.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    private static double loss(Ring ring, Tuned tuned, double[] at) {
        Tried tried = ring.rule(tuned.rival(ring.kitchen().recipe(), at), Manner.ONE_LIFT);
        double beside = tried.besideMiddleKelvin();
        double distance = Double.isNaN(beside) ? MOST_KELVIN : Math.min(MOST_KELVIN, Math.abs(beside));
        List<Double> errors = new ArrayList<>(Figures.cueErrors(List.of(tried)));
        double error = errors.isEmpty() ? MOST_KELVIN : Math.min(MOST_KELVIN, errors.get(0));
        return distance + ERROR_COUNTS * error;
    }
}
