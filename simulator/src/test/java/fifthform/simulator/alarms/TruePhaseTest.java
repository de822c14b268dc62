package fifthform.simulator.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.recipe.Phase;
import fifthform.simulator.bowl.Spot;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The phase as the bowl's place and warmth have it. */
class TruePhaseTest {
    private final TruePhase phase = new TruePhase(AlarmGoalsTest.recipe("dark"));
    private Instant at = Instant.EPOCH;

    private void stays(int seconds, Spot spot, double celsius) {
        for (int i = 0; i < seconds; i++) {
            phase.saw(at, spot, celsius);
            at = at.plusSeconds(1);
        }
    }

    private List<Phase> right() {
        return Arrays.stream(Phase.values()).filter(p -> phase.isRight(p, at)).toList();
    }

    @Test
    void goesFromTheMeltToTheWork() {
        stays(60, Spot.HOT_BATH, 45);
        assertEquals(List.of(Phase.MELT), right());
        assertFalse(phase.leftTheMelt());
        stays(60, Spot.COLD_WATER, 36);
        assertEquals(List.of(Phase.COOL), right());
        stays(60, Spot.TABLE, 27.5);
        assertEquals(List.of(Phase.SEED), right());
        stays(60, Spot.WARM_BATH, 30);
        assertEquals(List.of(Phase.REWARM), right());
        stays(30, Spot.TABLE, 31.5);
        assertEquals(List.of(Phase.REWARM, Phase.WORK), right(), "it still turns");
        stays(90, Spot.TABLE, 31.5);
        assertEquals(List.of(Phase.WORK), right());
        assertTrue(phase.isWork());
    }

    @Test
    void forTwentySecondsAfterAChangeTheOldPhaseCountsAsWell() {
        stays(60, Spot.HOT_BATH, 45);
        stays(20, Spot.COLD_WATER, 45);
        assertEquals(List.of(Phase.MELT, Phase.COOL), right());
        stays(2, Spot.COLD_WATER, 45);
        assertEquals(List.of(Phase.COOL), right());
    }

    @Test
    void backInTheColdWaterItCoolsAgain() {
        stays(10, Spot.HOT_BATH, 45);
        stays(10, Spot.COLD_WATER, 28);
        stays(60, Spot.WARM_BATH, 34);
        stays(60, Spot.COLD_WATER, 33);
        assertEquals(List.of(Phase.COOL), right());
        assertFalse(phase.isWork());
    }
}
