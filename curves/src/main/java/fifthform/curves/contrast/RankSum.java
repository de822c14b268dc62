package fifthform.curves.contrast;

import java.util.Arrays;
import java.util.Optional;

/**
 * The rank-sum test of two groups, exact and with ties: every way in which the ranks could have fallen to the two groups is
 * counted, with middle ranks for equal values (Wilcoxon 1945, Biometrics Bulletin 1:80-83; Mann and Whitney 1947, Ann Math
 * Stat 18:50-60). Two-sided: as far from the middle or further, to either side.
 *
 * <p>The shift is the median of all differences between one of each group, its interval that of the same test without ties
 * (Hodges and Lehmann 1963, Ann Math Stat 34:598-611; Moses; Hollander and Wolfe, Nonparametric Statistical Methods, 4.2
 * and 4.3). Ties make it a little too wide. Commons Math has the test by its normal approximation only, which does not
 * hold for five against five.
 */
final class RankSum {
    /** Twice the middle ranks are whole; of doubles, sums of 1e-9 and less are rounding. */
    private static final double ROUNDING = 1e-9;

    private final int first;
    private final int second;
    private final double[] differences;
    private final double[] ways;
    private final double all;
    private final int twiceMean;
    private final int observed;

    /** Neither group may be empty. */
    RankSum(double[] first, double[] second) {
        if (first.length == 0 || second.length == 0) throw new IllegalArgumentException("a group is empty");
        this.first = first.length;
        this.second = second.length;
        differences = differences(first, second);
        int[] ranks = twiceRanks(first, second);
        observed = Arrays.stream(ranks, 0, first.length).sum();
        ways = ways(ranks, first.length);
        all = Arrays.stream(ways).sum();
        twiceMean = first.length * (first.length + second.length + 1);
    }

    /** How likely so much or more is by chance, 0 to 1. */
    double chance() {
        return beyond(Math.abs(observed - twiceMean));
    }

    /** Whether the first group lies rather higher. */
    boolean isFirstHigher() {
        return observed > twiceMean;
    }

    /** The least chance that groups of these sizes with these values can show. */
    double leastChance() {
        int furthest = 0;
        for (int sum = 0; sum < ways.length; sum++)
            if (ways[sum] > 0) furthest = Math.max(furthest, Math.abs(sum - twiceMean));
        return beyond(furthest);
    }

    private double beyond(int distance) {
        double count = 0;
        for (int sum = 0; sum < ways.length; sum++) if (Math.abs(sum - twiceMean) >= distance) count += ways[sum];
        return Math.min(1, count / all);
    }

    /** By how much the first group lies above the second: Hodges and Lehmann's median of differences. */
    double shift() {
        int middle = differences.length / 2;
        return differences.length % 2 == 1 ? differences[middle] : (differences[middle - 1] + differences[middle]) / 2;
    }

    /**
     * Where the shift lies.
     *
     * @param doubt at most so likely it does not, 0 to 1
     * @return empty where groups so small cannot say it
     */
    Optional<Span> interval(double doubt) {
        int[] untied = new int[first + second];
        for (int i = 0; i < untied.length; i++) untied[i] = 2 * (i + 1);
        double[] free = ways(untied, first);
        double total = Arrays.stream(free).sum();
        int least = first * (first + 1);
        double below = 0;
        int outside = 0;
        // Mann and Whitney's count is (rank sum − least)/2; `outside` of the differences lie beyond each end.
        for (int count = 0; count <= first * second; count++) {
            below += free[least + 2 * count] / total;
            if (below > doubt / 2 + ROUNDING) break;
            outside++;
        }
        if (outside == 0) return Optional.empty();
        return Optional.of(new Span(differences[outside - 1], differences[differences.length - outside]));
    }

    private static double[] differences(double[] first, double[] second) {
        double[] all = new double[first.length * second.length];
        int at = 0;
        for (double one : first) for (double other : second) all[at++] = one - other;
        Arrays.sort(all);
        return all;
    }

    private static int[] twiceRanks(double[] first, double[] second) {
        double[] values = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, values, first.length, second.length);
        int[] ranks = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            int below = 0;
            int same = 0;
            for (double other : values) {
                if (other < values[i]) below++;
                else if (other == values[i]) same++;
            }
            ranks[i] = 2 * below + same + 1;
        }
        return ranks;
    }

    /** In how many ways so many of these numbers have each sum. */
    private static double[] ways(int[] numbers, int chosen) {
        int most = Arrays.stream(numbers).sum();
        double[][] ways = new double[chosen + 1][most + 1];
        ways[0][0] = 1;
        int reached = 0;
        for (int number : numbers) {
            reached += number;
            for (int k = chosen; k > 0; k--)
                for (int sum = reached; sum >= number; sum--) ways[k][sum] += ways[k - 1][sum - number];
        }
        return ways[chosen];
    }
}
