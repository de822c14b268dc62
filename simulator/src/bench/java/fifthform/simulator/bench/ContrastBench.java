package fifthform.simulator.bench;

import fifthform.curves.contrast.Comparison;
import fifthform.curves.contrast.LookedBatch;
import fifthform.curves.contrast.Suggestion;
import fifthform.curves.contrast.Trait;
import fifthform.simulator.bench.KnownCause.Cause;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What comparing marked with fine batches is worth, over makers whose cause is known: false claims where nothing that is
 * compared spoils, how soon a cause is found, and what following the suggestion does to the bars.
 *
 * <p>{@code java … ContrastBench SEED MAKERS_WITHOUT_CAUSE MAKERS_WITH} (73, 4000 and 400 by default).
 */
public final class ContrastBench {
    private static final int[] COUNTS = {10, 15, 20, 30, 40};
    private static final int MOST = 40;
    private static final int FURTHER = 60;

    private ContrastBench() {}

    public static void main(String[] arguments) {
        long seed = arguments.length > 0 ? Long.parseLong(arguments[0]) : 73;
        int without = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 4000;
        int with = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 400;
        falseClaims(seed, without);
        for (Cause cause : new Cause[] {Cause.OVERSHOOT, Cause.COOLED_SHORT}) found(cause, seed, with);
    }

    private static void falseClaims(long seed, int makers) {
        int[] claims = new int[COUNTS.length];
        int[] enough = new int[COUNTS.length];
        int ever = 0;
        for (int n = 0; n < makers; n++) {
            List<LookedBatch> batches = KnownCause.maker(Cause.NOTHING, seed, n).batches(MOST);
            for (int i = 0; i < COUNTS.length; i++) {
                Comparison said = KnownCause.said(batches, COUNTS[i]);
                if (said.says() != Comparison.Says.TOO_FEW) enough[i]++;
                if (said.says() == Comparison.Says.DIFFERS) claims[i]++;
            }
            boolean once = false;
            for (int count = 10; count <= MOST && !once; count++)
                once = KnownCause.said(batches, count).says() == Comparison.Says.DIFFERS;
            if (once) ever++;
        }
        for (int i = 0; i < COUNTS.length; i++) {
            print("NOTHING, " + COUNTS[i] + " batches: a claim of all", claims[i], makers);
            print("   of those with five of each", claims[i], Math.max(1, enough[i]));
        }
        print("NOTHING, asked after each batch from 10 to 40: ever a claim", ever, makers);
    }

    private static void found(Cause cause, long seed, int makers) {
        int[] claims = new int[COUNTS.length];
        int[] suggested = new int[COUNTS.length];
        int[] enough = new int[COUNTS.length];
        List<Map<Trait, Integer>> firsts = new ArrayList<>();
        for (int i = 0; i < COUNTS.length; i++) firsts.add(new EnumMap<>(Trait.class));
        double fine = 0;
        Followed followed = new Followed();
        for (int n = 0; n < makers; n++) {
            KnownCause maker = KnownCause.maker(cause, seed, n);
            List<LookedBatch> batches = maker.batches(MOST);
            double before = maker.fineShare(Optional.empty(), FURTHER);
            fine += before / makers;
            for (int i = 0; i < COUNTS.length; i++) {
                Comparison said = KnownCause.said(batches, COUNTS[i]);
                if (said.says() != Comparison.Says.TOO_FEW) enough[i]++;
                if (said.says() == Comparison.Says.DIFFERS) claims[i]++;
                Optional<Suggestion> suggestion = said.suggestion();
                if (suggestion.isPresent()) {
                    suggested[i]++;
                    firsts.get(i).merge(suggestion.get().trait(), 1, Integer::sum);
                }
                if (COUNTS[i] == 20 && suggestion.isPresent())
                    followed.take(before, maker.fineShare(suggestion, FURTHER));
            }
        }
        System.out.printf(Locale.ROOT, "%s: fine by habit %.1f %%%n", cause, 100 * fine);
        for (int i = 0; i < COUNTS.length; i++) {
            print(cause + ", " + COUNTS[i] + " batches: a claim of all", claims[i], makers);
            print("   of those with five of each", claims[i], Math.max(1, enough[i]));
            System.out.println("   suggestions " + suggested[i] + ": " + firsts.get(i));
        }
        followed.print();
    }

    /** What following did. */
    private static final class Followed {
        private final List<Double> before = new ArrayList<>();
        private final List<Double> after = new ArrayList<>();

        void take(double fineBefore, double fineAfter) {
            before.add(fineBefore);
            after.add(fineAfter);
        }

        void print() {
            int rose = 0;
            int fell = 0;
            Gains gains = new Gains();
            for (int i = 0; i < before.size(); i++) {
                double gain = after.get(i) - before.get(i);
                gains.add(gain);
                if (gain > 0.05) rose++;
                if (gain < -0.05) fell++;
            }
            System.out.printf(
                    Locale.ROOT,
                    "   followed after 20 batches by %d makers: fine %.1f %% before, %.1f %% after, gain %.1f ± %.1f points;"
                            + " %d rose and %d fell by more than 5 points%n",
                    before.size(),
                    100 * mean(before),
                    100 * mean(after),
                    100 * gains.mean(),
                    100 * gains.standardError(),
                    rose,
                    fell);
        }

        private static double mean(List<Double> all) {
            return all.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
        }
    }

    private static final class Gains {
        private int count;
        private double sum;
        private double squares;

        void add(double gain) {
            count++;
            sum += gain;
            squares += gain * gain;
        }

        double mean() {
            return sum / count;
        }

        double standardError() {
            return Math.sqrt((squares / count - mean() * mean()) / Math.max(1, count - 1));
        }
    }

    private static void print(String what, int hits, int of) {
        Interval interval = Interval.ofProportion(hits, of);
        System.out.printf(
                Locale.ROOT,
                "%-62s %5d of %d, %.2f %% (%.2f to %.2f)%n",
                what,
                hits,
                of,
                100.0 * hits / of,
                100 * interval.low(),
                100 * interval.high());
    }
}
