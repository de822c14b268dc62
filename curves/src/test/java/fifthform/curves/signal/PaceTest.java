package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How long is too long depends on who speaks. */
class PaceTest {
    @Test
    void aRoomThermometerThatSpeaksOnceAMinuteIsNotSilent() {
        assertTrue(Pace.ANY.overdueSeconds() >= 180);
        Pace pace = Pace.ANY.with(60);
        assertEquals(300, pace.overdueSeconds(), 1e-9);
        assertEquals(300, pace.with(60).overdueSeconds(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 1})
    void aQuickOneIsMissedAfterTwoToFiveSeconds(double period) {
        Pace pace = Pace.QUICK.with(period).with(period).with(period);
        assertEquals(Math.max(2, 5 * period), pace.overdueSeconds(), 1e-9);
    }

    @Test
    void onePauseSaysNothingOfThePaceTwoAlikeDo() {
        Pace pace = Pace.QUICK.with(1).with(1);
        assertEquals(5, pace.with(25).overdueSeconds(), 1e-9);
        assertEquals(5, pace.with(25).with(1).with(25).overdueSeconds(), 1e-9);
        assertEquals(50, pace.with(10).with(10).overdueSeconds(), 1e-9);
    }
}
