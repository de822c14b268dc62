package fifthform.curves.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.BarLook.Sureness;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Several looks at the bars of one batch say one thing. */
class OutcomeTest {
    private static final BarLook FINE_AFTER_A_DAY = SignTest.look(24, Bloom.NONE, Sureness.SURE);
    private static final BarLook FINE_AFTER_A_WEEK = SignTest.look(168, Bloom.NONE, Sureness.SURE);
    private static final BarLook MARKS_AFTER_A_DAY = SignTest.look(24, Bloom.STREAKS, Sureness.SURE);
    private static final BarLook MARKS_AFTER_A_WEEK = SignTest.look(168, Bloom.VEIL, Sureness.SURE);

    /** How much likelier lost temper makes these looks than kept temper does. */
    private static double odds(BarLook... looks) {
        Outcome outcome = Outcome.of(List.of(looks)).outcome().orElseThrow();
        return outcome.ifLost() / outcome.ifKept();
    }

    private static LeftOut leftOut(BarLook... looks) {
        return Outcome.of(List.of(looks)).leftOut().orElseThrow();
    }

    @Test
    void aLaterLookRefinesAnEarlierOne() {
        assertTrue(odds(FINE_AFTER_A_DAY) < 0.5);
        assertTrue(odds(FINE_AFTER_A_DAY, FINE_AFTER_A_WEEK) < odds(FINE_AFTER_A_DAY) / 4);
        assertEquals(odds(FINE_AFTER_A_WEEK), odds(FINE_AFTER_A_DAY, FINE_AFTER_A_WEEK), 1e-12);
    }

    /** Marks that came after a fine first day are more often another cause's. */
    @Test
    void marksAtOnceSayMoreThanMarksThatCameLater() {
        assertTrue(odds(MARKS_AFTER_A_DAY) > 10);
        assertTrue(odds(MARKS_AFTER_A_WEEK) > 5);
        double later = odds(FINE_AFTER_A_DAY, MARKS_AFTER_A_WEEK);
        assertTrue(later > 1 && later < odds(MARKS_AFTER_A_WEEK), "was " + later);
    }

    @Test
    void whoIsNotSureCountsForLess() {
        double unsure = odds(SignTest.look(24, Bloom.STREAKS, Sureness.UNSURE));
        assertTrue(unsure > 1 && unsure < odds(MARKS_AFTER_A_DAY) / 2, "was " + unsure);
        double fine = odds(SignTest.look(168, Bloom.NONE, Sureness.UNSURE));
        assertTrue(fine < 1 && fine > 2 * odds(FINE_AFTER_A_WEEK), "was " + fine);
    }

    @Test
    void theOrderOfLooksDoesNotCount() {
        assertEquals(
                Outcome.of(List.of(FINE_AFTER_A_DAY, MARKS_AFTER_A_WEEK)),
                Outcome.of(List.of(MARKS_AFTER_A_WEEK, FINE_AFTER_A_DAY)));
    }

    @Test
    void whatSaysNothingIsLeftOutWithItsReason() {
        assertEquals(LeftOut.TOO_EARLY, leftOut(SignTest.look(3, Bloom.NONE, Sureness.SURE)));
        assertEquals(LeftOut.CONTRADICTS, leftOut(MARKS_AFTER_A_DAY, FINE_AFTER_A_WEEK));
        assertEquals(LeftOut.OTHER_CAUSE, leftOut(SignTest.look(24, Bloom.SUGAR, Sureness.SURE)));
        assertEquals(LeftOut.UNCLEAR, leftOut());
    }

    /** Later marks on bars kept warm take nothing from the look before. */
    @Test
    void theStoresMarksLeaveTheEarlierLookStanding() {
        BarLook sugarLater = SignTest.look(168, Bloom.SUGAR, Sureness.SURE);
        Outcome outcome =
                Outcome.of(List.of(FINE_AFTER_A_DAY, sugarLater)).outcome().orElseThrow();
        assertEquals(OptionalDouble.of(24), outcome.cleanAtHours());
        assertTrue(outcome.markedAtHours().isEmpty());
    }

    @Test
    void likelihoodsAreSharesAtAnyAge() {
        for (double clean = 1; clean < BarLook.OLDEST_HOURS / 2; clean *= 1.7) {
            Outcome outcome = new Outcome(OptionalDouble.of(clean), OptionalDouble.of(1.5 * clean), Sureness.SURE);
            for (double share : new double[] {outcome.ifLost(), outcome.ifKept()})
                assertTrue(share >= 0 && share <= 1, clean + ": " + share);
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> new Outcome(OptionalDouble.of(5), OptionalDouble.of(5), Sureness.SURE));
    }
}
