package fifthform.simulator.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.recipe.Recipe;
import fifthform.simulator.alarms.MeltOutTruth.Alarm;
import fifthform.simulator.alarms.MeltOutTruth.Melt;
import fifthform.simulator.alarms.MeltOutTruth.Probe;
import fifthform.simulator.alarms.MeltOutTruth.Stretch;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What counts as a melt-out, and as told. */
class MeltOutTruthTest {
    private static final Recipe DARK = AlarmGoalsTest.recipe("dark");
    private static final double HOT = DARK.meltOut().limitCelsius();
    private static final double COOL = DARK.work().range().lowCelsius() - 2;

    private final MeltOutTruth truth = new MeltOutTruth(DARK);
    private Instant at = Instant.EPOCH;
    private Melt melt = Melt.LEFT;
    private Probe probe = Probe.READS;

    private MeltOutTruthTest stays(int seconds, double celsius, Alarm alarm) {
        for (int i = 0; i < 2 * seconds; i++) {
            truth.saw(at, celsius, melt, probe, alarm);
            at = at.plusMillis(500);
        }
        return this;
    }

    private List<Boolean> told() {
        return truth.ended().stream().map(Stretch::told).toList();
    }

    @Test
    void whatWasCooledAndIsHotForTenSecondsIsOne() {
        stays(1, COOL, Alarm.QUIET).stays(11, HOT, Alarm.QUIET).stays(60, COOL, Alarm.QUIET);
        assertEquals(List.of(false), told());
    }

    @Test
    void aShorterOneIsNone() {
        stays(1, COOL, Alarm.QUIET).stays(10, HOT, Alarm.QUIET).stays(60, COOL, Alarm.QUIET);
        assertEquals(List.of(), told());
    }

    @Test
    void itIsToldUpToTwentySecondsAfterItsEnd() {
        stays(1, COOL, Alarm.QUIET).stays(11, HOT, Alarm.QUIET).stays(19, COOL, Alarm.QUIET);
        stays(1, COOL, Alarm.STANDS);
        assertEquals(List.of(true), told());
    }

    @Test
    void laterIsTooLate() {
        stays(1, COOL, Alarm.QUIET).stays(11, HOT, Alarm.QUIET).stays(21, COOL, Alarm.QUIET);
        stays(5, COOL, Alarm.STANDS);
        assertEquals(List.of(false), told());
    }

    @Test
    void heatBeforeItWasCooledIsNone() {
        stays(60, HOT + 10, Alarm.QUIET);
        assertEquals(List.of(), told());
        stays(1, COOL, Alarm.QUIET);
        melt = Melt.GOES_ON;
        stays(60, HOT, Alarm.QUIET);
        assertEquals(List.of(), told());
    }

    @Test
    void withoutAProbeThereIsNothingToTell() {
        stays(1, COOL, Alarm.QUIET);
        probe = Probe.ELSEWHERE;
        stays(60, HOT, Alarm.QUIET);
        assertEquals(List.of(), told());
    }

    @Test
    void eachIsToldByItself() {
        stays(1, COOL, Alarm.QUIET).stays(12, HOT, Alarm.STANDS).stays(60, COOL, Alarm.QUIET);
        stays(12, HOT, Alarm.QUIET).stays(60, COOL, Alarm.QUIET);
        assertEquals(List.of(true, false), told());
    }
}
