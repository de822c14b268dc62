package fifthform.simulator.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.simulator.alarms.FalseWarnings.When;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** A warning is false where the chocolate came nowhere near. */
class FalseWarningsTest {
    private final FalseWarnings warnings = new FalseWarnings(32.5);

    private static Instant at(int seconds) {
        return Instant.EPOCH.plusSeconds(seconds);
    }

    @Test
    void whatIsNeverWarmIsFalse() {
        warnings.raised(at(0), When.IN_WORK);
        warnings.saw(at(180), 31);
        assertEquals(0, warnings.all());
        warnings.saw(at(181), 31);
        assertEquals(1, warnings.inWork());
        warnings.raised(at(300), When.EARLIER);
        warnings.ended();
        assertEquals(2, warnings.all());
        assertEquals(1, warnings.inWork());
    }

    @Test
    void warmWithinThreeMinutesOrAMinuteBeforeIsTrue() {
        warnings.raised(at(0), When.IN_WORK);
        warnings.saw(at(179), 32.5);
        warnings.raised(at(239), When.IN_WORK);
        warnings.ended();
        assertEquals(0, warnings.all());
        warnings.raised(at(240), When.IN_WORK);
        warnings.ended();
        assertEquals(1, warnings.all());
    }

    @Test
    void inAMeltNoWarmthMakesItTrue() {
        warnings.plainlyFalse();
        warnings.saw(at(1), 45);
        assertEquals(1, warnings.all());
        assertEquals(0, warnings.inWork());
    }
}
