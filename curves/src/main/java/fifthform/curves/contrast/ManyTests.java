package fifthform.curves.contrast;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Chances of several tests together, so that one false claim among them all is no more likely than of one test. */
final class ManyTests {
    private ManyTests() {}

    /**
     * Holm's step-down correction (Holm 1979, Scand J Stat 6:65-70): the smallest times their number, the next times one
     * less, none below the one before it, none above 1.
     *
     * @return corrected chances, in the order they came in
     */
    static double[] holm(double[] chances) {
        int[] order = IntStream.range(0, chances.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> chances[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] corrected = new double[chances.length];
        double before = 0;
        for (int i = 0; i < order.length; i++) {
            before = Math.max(before, Math.min(1, (chances.length - i) * chances[order[i]]));
            corrected[order[i]] = before;
        }
        return corrected;
    }

    /**
     * The least chance a test must be able to show to be worth counting at all (Tarone 1990, Biometrics 46:515-522). What
     * tests can show at best hangs on the sizes and on the values of both groups together, and not on which is which; so
     * those that could never reach the level may be left out before looking.
     *
     * @param leastChances what each can show at best
     * @param level of all together
     */
    static double worthCounting(double[] leastChances, double level) {
        for (int tests = 1; ; tests++) {
            double limit = level / tests;
            long reach = Arrays.stream(leastChances).filter(p -> p <= limit).count();
            if (reach <= tests) return limit;
        }
    }
}
