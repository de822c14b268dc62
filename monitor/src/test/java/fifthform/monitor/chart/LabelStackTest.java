package fifthform.monitor.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LabelStackTest {
    @Test
    void labelsThatDoNotMeetStayWhereTheyAre() {
        assertArrayEquals(
                new double[] {20, 60}, LabelStack.spread(new double[] {20, 60}, new double[] {30, 30}, 0, 100));
    }

    @Test
    void atTheEdgeTheyMoveInwards() {
        assertArrayEquals(
                new double[] {5, 15, 95},
                LabelStack.spread(new double[] {0, 2, 100}, new double[] {10, 10, 10}, 0, 100));
    }

    /** Two that meet give way alike; one alone would be read as another line's. */
    @Test
    void whatMeetsGivesWayAlike() {
        assertArrayEquals(
                new double[] {44, 54}, LabelStack.spread(new double[] {48, 50}, new double[] {10, 10}, 0, 100));
        assertArrayEquals(
                new double[] {40, 50, 60},
                LabelStack.spread(new double[] {49, 50, 51}, new double[] {10, 10, 10}, 0, 100),
                1e-9);
    }

    @Test
    void noneCoversAnotherAndAllStayInsideWhereTheyFit() {
        for (long seed = 0; seed < 500; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int count = 1 + random.nextInt(8);
            double[] wished = random.doubles(count, -10, 110).sorted().toArray();
            double[] size = random.doubles(count, 2, 12).toArray();
            double[] placed = LabelStack.spread(wished, size, 0, 100);
            for (int i = 0; i < count; i++) {
                assertTrue(placed[i] - size[i] / 2 >= -1e-9 && placed[i] + size[i] / 2 <= 100 + 1e-9, "seed " + seed);
                if (i > 0)
                    assertTrue(
                            placed[i] - placed[i - 1] >= (size[i] + size[i - 1]) / 2 - 1e-9,
                            "seed " + seed + Arrays.toString(placed));
            }
        }
    }
}
