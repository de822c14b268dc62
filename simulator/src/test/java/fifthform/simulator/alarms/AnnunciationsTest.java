package fifthform.simulator.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.alarm.Priority;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.input.AlarmId;
import java.time.Instant;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How often, how close together, how much for nothing. */
class AnnunciationsTest {
    private static final AlarmId ONE = AlarmId.OVER_RANGE;
    private static final AlarmId OTHER = AlarmId.TOO_COOL;

    private final Annunciations ears = new Annunciations();

    private void raised(AlarmId id, double seconds) {
        ears.raised(new AlarmRaised(at(seconds), id, Priority.PROMPT, OptionalDouble.empty()));
    }

    private static Instant at(double seconds) {
        return Instant.EPOCH.plusMillis(Math.round(1000 * seconds));
    }

    @Test
    void theMostInAnyTenMinutesAreCounted() {
        for (double minute : new double[] {0, 4, 9, 10.1, 13, 30}) raised(ONE, 60 * minute);
        assertEquals(6, ears.count());
        assertEquals(4, ears.mostInTenMinutes(), "minutes 4 to 13");
        assertEquals(Map.of(Priority.PROMPT, 6L), ears.byPriority());
    }

    @Test
    void theSameAlarmThreeTimesInAMinuteChatters() {
        raised(ONE, 0);
        raised(OTHER, 10);
        raised(ONE, 30);
        assertEquals(0, ears.chattering());
        raised(ONE, 60);
        assertEquals(1, ears.chattering());
    }

    @Test
    void whatGoesWithinAMinuteByItselfIsFleeting() {
        raised(ONE, 0);
        ears.cleared(ONE, at(59));
        assertEquals(1, ears.fleeting());
        raised(ONE, 100);
        ears.cleared(ONE, at(160));
        assertEquals(1, ears.fleeting(), "it stood for a minute");
        raised(ONE, 200);
        ears.acted(at(205));
        ears.cleared(ONE, at(210));
        assertEquals(1, ears.fleeting(), "hands made it go");
    }

    @Test
    void whatStandsForMoreThanTenMinutesUnchangedIsCountedOnce() {
        raised(ONE, 0);
        ears.tick(at(600));
        assertEquals(0, ears.standing());
        ears.seen(ONE, at(599));
        ears.tick(at(1199));
        assertEquals(0, ears.standing(), "seen is a change");
        ears.tick(at(1200));
        ears.tick(at(1300));
        assertEquals(1, ears.standing());
    }
}
