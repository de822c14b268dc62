package fifthform.monitor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class PaceTest {
    /** Sixty pulses a second, a gap of 100 ms: at most ten a second, and at once at the very first. */
    @Test
    void atMostOnceAGap() {
        Pace pace = new Pace(100);
        long[] due = LongStream.range(0, 60)
                .map(pulse -> pulse * 17)
                .filter(pace::due)
                .toArray();
        assertEquals(0, due[0]);
        for (int i = 1; i < due.length; i++)
            assertEquals(true, due[i] - due[i - 1] >= 100 && due[i] - due[i - 1] < 117);
    }

    @Test
    void aClockBelowZeroCounts() {
        Pace pace = new Pace(100);
        assertEquals(true, pace.due(Long.MAX_VALUE - 10));
        assertEquals(false, pace.due(Long.MAX_VALUE - 10 + 50));
        assertEquals(true, pace.due(Long.MAX_VALUE - 10 + 100));
    }

    /** A reading that comes half a gap after the last picture is shown then, and floods are still held back. */
    @Test
    void newsComeSooner() {
        Pace pace = new Pace(100, 50);
        assertEquals(true, pace.due(0, true));
        assertEquals(false, pace.due(40, true));
        assertEquals(false, pace.due(60, false));
        assertEquals(true, pace.due(60, true));
        assertEquals(true, pace.due(160, false));
    }
}
