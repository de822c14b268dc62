package fifthform.curves.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The maker's hands, measured by the answers to cues. */
class ReactionTest {
    private static final Duration PRIOR = Duration.ofMillis(3500);

    private static Reaction after(Evidence how, double... seconds) {
        Reaction reaction = Reaction.UNKNOWN;
        for (double each : seconds) reaction = reaction.answered(millis(each), how, PRIOR);
        return reaction;
    }

    private static Duration millis(double seconds) {
        return Duration.ofMillis(Math.round(1000 * seconds));
    }

    private static double seconds(Reaction reaction) {
        return reaction.time(PRIOR).toMillis() / 1000.0;
    }

    @Test
    void beforeAnyAnswerTheSetUpsFigureHolds() {
        assertEquals(PRIOR, Reaction.UNKNOWN.time(PRIOR));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.5, 2, 6})
    void severalAnswersBringItNearTheMakersOwn(double own) {
        Reaction reaction = after(Evidence.TOLD, own, own, own, own, own, own, own, own);
        assertEquals(1.16 * own, seconds(reaction), 0.2 * own, "the answer that two of three stay under");
    }

    @Test
    void whatTheCurveShowsCountsLessThanAKey() {
        double told = seconds(after(Evidence.TOLD, 1.5));
        double seen = seconds(after(Evidence.INFERRED, 1.5));
        assertTrue(told < seen && seen < 3.5, told + " " + seen);
    }

    /** Somebody on the phone has not answered slowly; they were not there. */
    @Test
    void whoWasNotThereHasNotAnswered() {
        assertEquals(Reaction.UNKNOWN, after(Evidence.TOLD, 12.1));
        assertEquals(Reaction.UNKNOWN, after(Evidence.TOLD, 600));
        assertEquals(Reaction.UNKNOWN, after(Evidence.TOLD, 0.1), "nobody answers that soon");
    }

    @Test
    void oneSlowAnswerMovesItLittle() {
        double usual = seconds(after(Evidence.TOLD, 2, 2, 2, 2));
        double slow = seconds(after(Evidence.TOLD, 2, 2, 2, 2, 11.9));
        assertTrue(slow < 1.35 * usual, usual + " became " + slow);
    }
}
