package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Approach;
import fifthform.simulator.bench.WayUp.Keys;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Short dips in kitchens of which the engine knows nothing, from barely warm water to 80 °C, by makers who obey. Floors
 * far below what {@code WayUpBench} measures over hundreds; {@code -Dways=160} goes through as many.
 */
class WayUpTest {
    private static final int WAYS = Integer.getInteger("ways", 16);
    private static final long SEED = 5;

    @ParameterizedTest
    @EnumSource(Keys.class)
    void dipsHardlyEverGoOverAndEndInTheRange(Keys keys) {
        Fleet fleet = WideFleet.fleet().withSeed(SEED);
        List<WayUp> ways = LongStream.range(0, WAYS)
                .mapToObj(n -> WayUp.of(fleet, n, Approach.TOUCHES_WHERE_UNSURE, keys))
                .toList();
        long over = ways.stream().filter(w -> w.over(w.readCelsius(), 0.3)).count();
        long inside = ways.stream()
                .filter(w -> !w.over(w.trueCelsius(), 0.1) && !w.isShort(w.trueCelsius()))
                .count();
        int falseLifts = ways.stream().mapToInt(WayUp::falseLifts).sum();
        assertTrue(50 * over <= WAYS, over + " over by 0.3 K: " + ways);
        assertTrue(100 * inside >= 92L * WAYS, inside + " in range: " + ways);
        assertTrue(10 * falseLifts <= WAYS, falseLifts + " told to lift what was off the bath: " + ways);
    }
}
