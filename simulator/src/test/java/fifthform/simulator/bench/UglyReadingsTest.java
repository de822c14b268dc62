package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Batches of the home fleet (a seed of their own) whose readings are ugly in one way each. {@code -Dugly=200} makes the
 * table of DEVELOPERS.md, {@code -Dugly.seed} draws other kitchens.
 */
class UglyReadingsTest {
    private static final int BATCHES = Integer.getInteger("ugly", 4);
    private static final long SEED = Long.getLong("ugly.seed", 91);

    /**
     * The aim is at most one an hour. A tip that feels a wall half a kelvin warmer cannot be told from heat for ten
     * seconds, and what it seems to head for is said: there we are not.
     */
    private static double mostAnHour(Ugliness ugliness) {
        return ugliness == Ugliness.AT_WALL_FOR_25_S ? 5 : 1;
    }

    @ParameterizedTest
    @EnumSource(Ugliness.class)
    void raiseHardlyAFalseUrgentAlarm(Ugliness ugliness) {
        Fleet fleet = Fleet.builtIn(Fleet.HOME).withSeed(SEED);
        UglyReport report = new UglyReport();
        for (long number = 0; number < BATCHES; number++) UglyBatch.run(fleet, number, ugliness, report);
        System.out.println(report.line(ugliness));
        assertTrue(
                report.falseUrgentAnHour() <= mostAnHour(ugliness),
                report.where().toString());
    }
}
