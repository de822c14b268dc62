package fifthform.curves.bowlcheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.Usual;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BowlCheckTest {
    private static final double TURN = Math.log(20);
    private static final double PULL = Math.log(0.12);

    private static BowlAnswers after(double... away) {
        Usual turn = Usual.NEVER;
        Usual pull = Usual.NEVER;
        for (double each : away) {
            turn = turn.and(TURN + each);
            pull = pull.and(PULL - each);
        }
        return new BowlAnswers(turn, pull, Usual.NEVER);
    }

    private static Answer answer(double turnAway, double pullAway) {
        return new Answer(
                OptionalDouble.of(TURN + turnAway), OptionalDouble.of(PULL + pullAway), OptionalDouble.empty());
    }

    private static final BowlAnswers STEADY = after(0.05, -0.05, 0.03, -0.03);

    @Test
    void theSameBowlIsNotDoubted() {
        assertEquals(Optional.empty(), BowlCheck.judge(STEADY, answer(0, 0)));
        assertEquals(Optional.empty(), BowlCheck.judge(STEADY, answer(0.1, -0.1)));
        assertEquals(Optional.empty(), BowlCheck.judge(STEADY, Answer.NONE));
    }

    @Test
    void glassForSteelIsSeenFromTheTurnAlone() {
        Answer turn = new Answer(OptionalDouble.of(TURN + 0.6), OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(Optional.of(OtherBowl.HEAVIER), BowlCheck.judge(STEADY, turn));
        assertEquals(Optional.of(OtherBowl.LIGHTER), BowlCheck.judge(STEADY, answer(-0.6, 0.5)));
    }

    @Test
    void twiceTheAmountNeedsBoth() {
        Answer turn = new Answer(OptionalDouble.of(TURN + 0.13), OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(Optional.empty(), BowlCheck.judge(STEADY, turn));
        assertEquals(Optional.of(OtherBowl.HEAVIER), BowlCheck.judge(STEADY, answer(0.13, -0.4)));
    }

    @Test
    void oneBatchSaysNothingYet() {
        assertEquals(Optional.empty(), BowlCheck.judge(after(0), answer(0.6, -0.5)));
    }

    /** Hands that scatter by themselves need more to be doubted. */
    @Test
    void carelessHandsAreNotAnotherBowl() {
        BowlAnswers scattered = after(0.5, -0.5, 0.4, -0.4);
        assertEquals(Optional.empty(), BowlCheck.judge(scattered, answer(0.6, -0.5)));
    }

    /** The ratio must be fair: with the scatter it takes for usual, a normal bowl is doubted in one batch of fifty. */
    @Test
    void aBowlOfUsualScatterIsHardlyEverDoubted() {
        Random random = new Random(5);
        int doubted = 0;
        int runs = 20_000;
        for (int run = 0; run < runs; run++) {
            Usual turn = Usual.NEVER;
            Usual pull = Usual.NEVER;
            for (int batch = 0; batch < 4; batch++) {
                turn = turn.and(TURN + 0.12 * random.nextGaussian());
                pull = pull.and(PULL + 0.14 * random.nextGaussian());
            }
            Answer next = answer(0.12 * random.nextGaussian(), 0.14 * random.nextGaussian());
            if (BowlCheck.judge(new BowlAnswers(turn, pull, Usual.NEVER), next).isPresent()) doubted++;
        }
        assertTrue(doubted <= 0.02 * runs, doubted + " of " + runs);
    }

    /** Against the two-pass formulas of a textbook. */
    @Test
    void runningSumsAreThoseOfTheWhole() {
        double[] figures = {2.5, -1, 4.25, 0.5};
        Usual usual = Usual.NEVER;
        for (double figure : figures) usual = usual.and(figure);
        assertEquals(4, usual.batches());
        assertEquals(1.5625, usual.mean(), 1e-12);
        assertEquals(15.796875, usual.squares(), 1e-12);
    }
}
