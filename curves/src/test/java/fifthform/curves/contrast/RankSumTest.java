package fifthform.curves.contrast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rank-sum test against printed examples and tables, and against all ways counted one by one. */
class RankSumTest {
    /**
     * Hollander and Wolfe, Nonparametric Statistical Methods (1973), 69f.: permeability of the chorioamnion at term and
     * before. Printed: W = 35, one-sided 0.1272. Shift 0.305, and -0.15 to 0.76 at 96 %, from memory of the book; scipy
     * 1.17 and all differences sorted say the same.
     */
    private static final double[] TERM = {0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46};

    private static final double[] BEFORE = {1.15, 0.88, 0.90, 0.74, 1.21};

    @Test
    void hollanderAndWolfesExample() {
        RankSum test = new RankSum(TERM, BEFORE);
        assertEquals(2 * 0.1272, test.chance(), 1e-4);
        assertTrue(test.isFirstHigher());
        assertEquals(0.305, test.shift(), 1e-9);
        Span interval = test.interval(0.05).orElseThrow();
        assertEquals(-0.15, interval.lower(), 1e-9);
        assertEquals(0.76, interval.upper(), 1e-9);
    }

    /**
     * With ties: diastolic blood pressures of the StatXact manual, printed with the documentation of R's exactRankTests:
     * exact two-sided 0.0989.
     */
    @Test
    void tiesAreCountedAsTheyAre() {
        double[] treated = {94, 108, 110, 90};
        double[] control = {80, 94, 85, 90, 90, 90, 108, 94, 78, 105, 88};
        assertEquals(0.0989, new RankSum(treated, control).chance(), 5e-5);
        assertEquals(0.0989, new RankSum(control, treated).chance(), 5e-5);
    }

    /** Critical values of Mann and Whitney's U, two-sided 0.05, as every book of tables has them (Auble 1953). */
    @ParameterizedTest
    @CsvSource({
        "4, 4, 0",
        "5, 5, 2",
        "6, 6, 5",
        "7, 7, 8",
        "8, 8, 13",
        "9, 9, 17",
        "10, 10, 23",
        "12, 12, 37",
        "15, 15, 64",
        "20, 20, 127",
        "5, 8, 6",
        "4, 10, 5",
        "7, 16, 26"
    })
    void printedCriticalValues(int first, int second, int critical) {
        assertTrue(of(first, second, critical).chance() <= 0.05);
        assertTrue(of(first, second, critical + 1).chance() > 0.05);
    }

    /** Groups without ties of which so many pairs have the first above the second. */
    private static RankSum of(int first, int second, int u) {
        int[] ranks = new int[first];
        for (int i = 0; i < first; i++) ranks[i] = i + 1;
        int left = u;
        for (int i = first - 1; i >= 0 && left > 0; i--) {
            int up = Math.min(second, left);
            ranks[i] += up;
            left -= up;
        }
        double[] one = new double[first];
        double[] other = new double[second];
        int at = 0;
        boolean[] taken = new boolean[first + second + 1];
        for (int i = 0; i < first; i++) {
            one[i] = ranks[i];
            taken[ranks[i]] = true;
        }
        for (int rank = 1; rank <= first + second; rank++) if (!taken[rank]) other[at++] = rank;
        return new RankSum(one, other);
    }

    /** By brute force: each way in which the values may be dealt to the two groups. */
    @ParameterizedTest
    @CsvSource({"1, 2, 2, 3, 5, 5, 8, 8, 8, 9", "1, 1, 1, 1, 1, 1, 2, 2, 3, 4", "9, 1, 8, 2, 7, 3, 6, 4, 5, 0"})
    void likeAllWaysCountedOneByOne(
            double a, double b, double c, double d, double e, double f, double g, double h, double i, double j) {
        double[] values = {a, b, c, d, e, f, g, h, i, j};
        double[] first = {a, b, c, d};
        double[] second = {e, f, g, h, i, j};
        double seen = Math.abs(rankSum(values, 0b1111) - 22);
        int ways = 0;
        int beyond = 0;
        for (int way = 0; way < 1 << 10; way++) {
            if (Integer.bitCount(way) != 4) continue;
            ways++;
            if (Math.abs(rankSum(values, way) - 22) >= seen - 1e-9) beyond++;
        }
        assertEquals((double) beyond / ways, new RankSum(first, second).chance(), 1e-12);
    }

    private static double rankSum(double[] values, int way) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            if ((way >> i & 1) == 0) continue;
            double own = values[i];
            sum += DoubleStream.of(values).filter(v -> v < own).count()
                    + (DoubleStream.of(values).filter(v -> v == own).count() + 1) / 2.0;
        }
        return sum;
    }

    @Test
    void whatGroupsCanShowAtBest() {
        assertEquals(
                2 / 252.0, new RankSum(new double[] {1, 2, 3, 4, 5}, new double[] {6, 7, 8, 9, 10}).chance(), 1e-12);
        assertEquals(
                2 / 252.0,
                new RankSum(new double[] {1, 4, 5, 8, 9}, new double[] {6, 7, 3, 2, 10}).leastChance(),
                1e-12);
        double[] alike = {3, 3, 3, 3, 3};
        assertEquals(1, new RankSum(alike, alike).leastChance(), 1e-12);
        assertFalse(new RankSum(alike, alike).isFirstHigher());
    }

    @Test
    void smallGroupsHaveNoSureInterval() {
        assertEquals(Optional.empty(), new RankSum(new double[] {1, 2, 3}, new double[] {4, 5, 6}).interval(0.05));
        Span all = new RankSum(new double[] {1, 2, 3, 4, 5}, new double[] {6, 7, 8, 9, 11})
                .interval(0.05 / 6)
                .orElseThrow();
        assertEquals(-10, all.lower());
        assertEquals(-1, all.upper());
    }

    @Test
    void aHundredBatchesAreCountedExactly() {
        double[] first = DoubleStream.iterate(0, v -> v + 2).limit(50).toArray();
        double[] second = DoubleStream.iterate(1, v -> v + 2).limit(50).toArray();
        // scipy 1.17, mannwhitneyu exact: U = 1225.
        assertEquals(0.8664717524, new RankSum(first, second).chance(), 1e-9);
    }

    @Test
    void anEmptyGroupIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new RankSum(new double[0], BEFORE));
    }
}
