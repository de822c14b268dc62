package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The plan in home kitchens: floors below what {@code PlanBench} measures over thousands; {@code -Devenings=400} does more. */
class PlannedEveningTest {
    private static final int EVENINGS = Integer.getInteger("evenings", 40);
    private static final long SEED = 52;

    @Test
    void theSlowBathNeverPassesAndTimesLieInTheirBands() {
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(SEED);
        List<PlannedEvening> evenings = LongStream.range(0, EVENINGS)
                .mapToObj(n -> PlannedEvening.of(fleet, n))
                .toList();
        long over = evenings.stream()
                .filter(e -> e.passes(e.stirredPeakCelsius())
                        || e.passes(e.forgottenPeakCelsius())
                        || e.passes(e.secondForgottenCelsius())
                        || e.passes(e.toppedUpPeakCelsius()))
                .count();
        long inBand = evenings.stream()
                .flatMap(e -> e.times().stream())
                .filter(PlannedEvening.Against::inBand)
                .count();
        long near = evenings.stream().filter(e -> e.inRange(e.endCelsius())).count();
        assertEquals(over * 100 / EVENINGS, 0, over + " passed");
        assertTrue(inBand >= 0.9 * 4 * EVENINGS, inBand + " of " + 4 * EVENINGS + " times in their bands");
        assertTrue(near >= 0.35 * EVENINGS, near + " ended in the range");
    }
}
