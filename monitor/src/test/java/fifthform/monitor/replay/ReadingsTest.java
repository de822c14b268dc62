package fifthform.monitor.replay;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A day of readings drawn in a thousand columns loses nothing that could be seen. */
class ReadingsTest {
    private static final long TENTH = 100_000_000L;

    private static Readings noisy(int size) {
        Random random = new Random(3);
        Readings readings = new Readings();
        for (int i = 0; i < size; i++) readings.add(i * TENTH, 30 + random.nextGaussian());
        readings.close();
        return readings;
    }

    @Test
    void everySpikeIsStillThere() {
        Readings readings = new Readings();
        for (int i = 0; i < 100_000; i++) readings.add(i * TENTH, i == 54_321 ? 40 : i == 77_777 ? 20 : 30);
        readings.close();
        double[] shown = readings.curve(0, 100_000 * TENTH, 500).celsius();
        assertEquals(40, Arrays.stream(shown).max().orElseThrow());
        assertEquals(20, Arrays.stream(shown).min().orElseThrow());
    }

    @Test
    void noColumnHasMoreThanFourPoints() {
        Readings readings = noisy(864_000);
        Readings.Curve curve = readings.curve(0, 864_000 * TENTH, 1600);
        assertTrue(curve.seconds().length <= 4 * 1601, curve.seconds().length + " points");
        for (int i = 1; i < curve.seconds().length; i++)
            assertTrue(curve.seconds()[i] > curve.seconds()[i - 1], "goes back at " + i);
    }

    @Test
    void eachColumnHasItsLowestAndHighest() {
        Readings readings = noisy(40_000);
        int columns = 40;
        Readings.Curve curve = readings.curve(0, 40_000 * TENTH, columns);
        for (int column = 0; column < columns; column++) {
            double[] wanted = readings.range(column * 1000 * TENTH, (column * 1000 + 999) * TENTH);
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < curve.seconds().length; i++) {
                if (curve.seconds()[i] < column * 100 || curve.seconds()[i] >= (column + 1) * 100) continue;
                low = Math.min(low, curve.celsius()[i]);
                high = Math.max(high, curve.celsius()[i]);
            }
            assertArrayEquals(wanted, new double[] {low, high}, "column " + column);
        }
    }

    @Test
    void noLineIsDrawnAcrossAGap() {
        Readings readings = new Readings();
        for (int i = 0; i < 100; i++) readings.add(i * TENTH, 30);
        for (int i = 0; i < 100; i++) readings.add(60_000_000_000L + i * TENTH, 31);
        readings.close();
        double[] seconds = readings.curve(0, 80_000_000_000L, 300).seconds();
        assertEquals(1, Arrays.stream(seconds).filter(Double::isNaN).count());
    }

    @Test
    void aSlowAdapterHasNoGapBetweenItsReadings() {
        Readings readings = new Readings();
        for (int i = 0; i < 50; i++) readings.add(i * 20_000_000_000L, 30 + i);
        readings.close();
        double[] seconds = readings.curve(0, 1_000_000_000_000L, 300).seconds();
        assertEquals(50, seconds.length);
        assertEquals(0, Arrays.stream(seconds).filter(Double::isNaN).count());
    }

    @Test
    void theLineRunsOutOfThePictureAtBothEnds() {
        Readings readings = noisy(1000);
        double[] seconds = readings.curve(20_050_000_000L, 40_050_000_000L, 100).seconds();
        assertTrue(seconds[0] < 20.05, "begins at " + seconds[0]);
        assertTrue(seconds[seconds.length - 1] > 40.05, "ends at " + seconds[seconds.length - 1]);
    }
}
