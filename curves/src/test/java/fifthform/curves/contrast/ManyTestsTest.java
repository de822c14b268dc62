package fifthform.curves.contrast;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ManyTestsTest {
    /** The usual example: of 0.01, 0.04, 0.03 and 0.005 the first and the last stand at 0.05. Worked by hand from Holm 1979. */
    @Test
    void holmsStepsByHand() {
        assertArrayEquals(
                new double[] {0.03, 0.06, 0.06, 0.02}, ManyTests.holm(new double[] {0.01, 0.04, 0.03, 0.005}), 1e-12);
        assertArrayEquals(new double[] {1, 1}, ManyTests.holm(new double[] {0.9, 0.7}), 1e-12);
        assertArrayEquals(new double[] {}, ManyTests.holm(new double[] {}));
    }

    /** Three that can reach 0.05/3, and two that never could: three are counted. */
    @Test
    void whatCouldNeverShowIsNotCounted() {
        assertEquals(0.05 / 3, ManyTests.worthCounting(new double[] {0.001, 0.004, 0.01, 0.2, 1}, 0.05), 1e-12);
        assertEquals(0.05, ManyTests.worthCounting(new double[] {0.3, 1}, 0.05), 1e-12);
        assertEquals(0.05 / 2, ManyTests.worthCounting(new double[] {0.02, 0.02, 0.04}, 0.05), 1e-12);
    }
}
