package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bench.Hold.Hands;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Holds of an hour; {@code HoldBench} goes through hundreds of them, {@code -Dholds=500} does here. */
class HoldTest {
    private static final int HOLDS = Integer.getInteger("holds", 12);
    private static final long SEED = 6;

    @Test
    void whoFollowsTheAdviceStaysInRangeLongerThanAlone() {
        double advised = inRange(Hands.ADVISED);
        double alone = inRange(Hands.ALONE);
        assertTrue(advised >= 0.9, "advised " + advised);
        assertTrue(advised > alone, "advised " + advised + ", alone " + alone);
    }

    private static double inRange(Hands hands) {
        Fleet fleet = WideFleet.fleet().withSeed(SEED);
        List<Hold> holds = LongStream.range(0, HOLDS)
                .mapToObj(n -> Hold.of(fleet, n, hands))
                .flatMap(hold -> hold.stream())
                .toList();
        assertTrue(holds.size() >= 0.9 * HOLDS, holds.size() + " came to the range");
        return holds.stream().mapToDouble(Hold::inRangeFraction).average().orElseThrow();
    }
}
