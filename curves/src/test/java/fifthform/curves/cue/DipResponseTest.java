package fifthform.curves.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What dips teach. */
class DipResponseTest {
    @Test
    void dipsThatAgreeMakeItSurerAndComeToTheirValue() {
        DipResponse response = DipResponse.NONE;
        double spread = 10;
        for (int i = 0; i < 5; i++) {
            response = response.seen(8, 0.5);
            assertTrue(response.logSpread() < spread + 1e-12, "after dip " + i);
            spread = response.logSpread();
        }
        // Ten effective seconds: eight over the bath and two of clinging water.
        assertEquals(0.05, response.kelvinPerSecond(), 1e-9);
        assertEquals(8, response.secondsFor(0.5), 1e-6);
    }

    @Test
    void theSafeLengthIsShorterThanTheMiddleOneAndGivesNoMoreThanWasAllowed() {
        DipResponse response = DipResponse.NONE.seen(8, 0.5);
        double safe = response.secondsWithin(0.5, 1.645);
        assertTrue(safe < response.secondsFor(0.5));
        assertEquals(0.5, response.mostFrom(safe, 1.645), 1e-9);
    }

    @Test
    void aRiseThatIsHardlyToBeReadTeachesLittle() {
        assertTrue(DipResponse.NONE.seen(5, 0.05).logSpread()
                > 3 * DipResponse.NONE.seen(5, 0.5).logSpread());
    }

    @Test
    void aColderBathIsLearnedWithinAFewDips() {
        DipResponse response = DipResponse.NONE;
        for (int i = 0; i < 6; i++) response = response.seen(8, 0.5);
        for (int i = 0; i < 6; i++) response = response.seen(8, 0.25);
        assertEquals(0.025, response.kelvinPerSecond(), 0.004);
    }
}
