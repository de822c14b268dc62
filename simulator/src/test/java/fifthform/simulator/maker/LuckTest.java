package fifthform.simulator.maker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** Chance as a value. */
class LuckTest {
    private static DoubleStream draws(int count, java.util.function.ToDoubleFunction<Luck> draw) {
        return Stream.iterate(new Luck(5), Luck::after).limit(count).mapToDouble(draw);
    }

    /** Pinned, so that another JDK that draws other numbers is noticed. */
    @Test
    void theSameNumbersOnEveryJdk() {
        assertEquals(0.386768045983934, new Luck(5).uniform());
        assertEquals(0.08464004539892195, new Luck(5).branch(3).normal());
        assertEquals(new SplittableRandom(5).nextDouble(), new Luck(5).uniform());
    }

    @Test
    void theMomentsAreThoseOfTheDistributions() {
        int n = 40_000;
        DescriptiveStatistics uniform =
                new DescriptiveStatistics(draws(n, Luck::uniform).toArray());
        assertEquals(0.5, uniform.getMean(), 0.005);
        assertEquals(Math.sqrt(1 / 12.0), uniform.getStandardDeviation(), 0.004);
        DescriptiveStatistics normal =
                new DescriptiveStatistics(draws(n, Luck::normal).toArray());
        assertEquals(0, normal.getMean(), 0.02);
        assertEquals(1, normal.getStandardDeviation(), 0.015);
        DescriptiveStatistics waits =
                new DescriptiveStatistics(draws(n, luck -> luck.exponential(8)).toArray());
        assertEquals(8, waits.getMean(), 0.15);
        assertEquals(8, waits.getStandardDeviation(), 0.25);
    }

    /** Branches are luck of their own: what they draw has nothing to do with each other. */
    @Test
    void branchesDoNotFollowEachOther() {
        int n = 10_000;
        double product = 0;
        for (int i = 0; i < n; i++) {
            Luck luck = new Luck(i);
            product += luck.branch(0).normal() * luck.branch(1).normal();
        }
        assertEquals(0, product / n, 0.04);
        assertTrue(Stream.iterate(0L, i -> i + 1)
                        .limit(1000)
                        .map(new Luck(5)::branch)
                        .distinct()
                        .count()
                == 1000);
    }
}
