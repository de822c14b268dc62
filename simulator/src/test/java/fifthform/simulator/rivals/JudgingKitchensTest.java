package fifthform.simulator.rivals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bench.Fleet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The kitchens that judge are as varied as they say. */
class JudgingKitchensTest {
    private static final Contest CONTEST = new Contest(Fleet.builtIn("judging"), 2);

    @Test
    void coastsSpreadFromAFewTenthsToSomeKelvin() {
        List<Double> coasts = CONTEST.each(0, 150, k -> new Ring(CONTEST, k).coast()).stream()
                .map(Ring.Coast::kelvin)
                .filter(Double::isFinite)
                .toList();
        assertTrue(coasts.size() >= 135, "nearly all come to the range, were " + coasts.size());
        assertEquals(0.35, Reached.percentile(coasts, 5).value(), 0.25);
        assertEquals(1.4, Reached.percentile(coasts, 50).value(), 0.4);
        assertEquals(3.4, Reached.percentile(coasts, 95).value(), 1.0);
    }

    @Test
    void everyFamilyIsThere() {
        Set<String> kinds = CONTEST.each(0, 300, Family::of).stream()
                .flatMap(f -> f.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()))
                .collect(Collectors.toSet());
        assertEquals(4 + 3 + 4 + 3 + 3, kinds.size(), kinds.toString());
    }

    @Test
    void anotherDayHasTheSameBowlAndOtherWater() {
        JudgedKitchen today = CONTEST.kitchen(1);
        JudgedKitchen then = today.onAnotherDay(CONTEST.kitchen(1_000_001));
        assertEquals(
                today.scenario().kitchen().bowl(), then.scenario().kitchen().bowl());
        assertEquals(
                today.scenario().kitchen().chocolate(),
                then.scenario().kitchen().chocolate());
        assertTrue(today.scenario().begins().warmBathCelsius()
                != then.scenario().begins().warmBathCelsius());
    }
}
