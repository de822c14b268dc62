package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What befalls the bars of three bowls, and two mishaps of the bowl itself; {@code FaultBench} is the same at length. */
class BarTrialTest {
    private static final Fleet FLEET = Fleet.builtIn(Fleet.HOME).withSeed(75);

    @Test
    void whatBefellTheBarsIsAmongTheFirstThreeCausesAndSoundBarsAreGivenNone() {
        List<BarTrial> all = LongStream.of(1, 4, 5)
                .parallel()
                .mapToObj(n -> BarTrial.ofOneBowl(FLEET, n))
                .flatMap(List::stream)
                .filter(BarTrial::shows)
                .toList();
        List<BarTrial> failed =
                all.stream().filter(t -> t.mishap() != Mishap.NONE).toList();
        long first = failed.stream().filter(BarTrial::isFirst).count();
        long three = failed.stream().filter(BarTrial::isAmongThree).count();
        assertTrue(failed.size() >= 24, failed.size() + " mishaps show");
        assertTrue(first >= 0.8 * failed.size(), first + " of " + failed.size() + " first");
        assertTrue(three >= 0.95 * failed.size(), three + " of " + failed.size() + " among three");
        List<BarTrial> sound =
                all.stream().filter(t -> t.mishap() == Mishap.NONE).toList();
        assertEquals(3, sound.size());
        assertEquals(
                0, sound.stream().filter(t -> t.after().claimed().isPresent()).count());
    }

    @Test
    void aBowlThatWasCooledTooLittleOrHeldTooLongIsToldByItsCurve() {
        List<BarTrial> bowls = Stream.of(Mishap.COOLED_WARM, Mishap.HELD_LONG)
                .parallel()
                .map(mishap -> BarTrial.of(FLEET, 4, mishap))
                .toList();
        for (BarTrial bowl : bowls) {
            assertTrue(bowl.shows(), bowl.mishap() + " does not show");
            assertTrue(bowl.isFirst(), () -> bowl.mishap() + ": " + bowl.after().suspects());
        }
    }
}
