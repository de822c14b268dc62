package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.OwnLimit.Says;
import fifthform.simulator.bench.KnownHarm.Doses;
import fifthform.simulator.bench.KnownHarm.Tally;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Makers with known limits: what is learned of them holds them. {@code LearnedLimitBench} has more of them. */
class LearnedLimitTest {
    private static final int MAKERS = Integer.getInteger("makers", 200);

    /** Of all makers, and of those only of whom a limit is said. */
    @ParameterizedTest
    @CsvSource({"MIXED, 6", "MIXED, 10", "MIXED, 20", "MIXED, 40", "PLAIN, 6", "PLAIN, 10", "PLAIN, 20", "PLAIN, 40"})
    void theKnownLimitLiesWithinTheBand(Doses doses, int batches) {
        Tally tally = Tally.of(MAKERS, batches, doses);
        assertTrue(tally.share() >= 0.85, tally.toString());
        assertTrue(tally.shareOfSaid() >= 0.85, tally.toString());
    }

    @Test
    void moreBatchesTellMore() {
        Tally few = Tally.of(MAKERS, 10, Doses.PLAIN);
        Tally many = Tally.of(MAKERS, 40, Doses.PLAIN);
        assertTrue(many.said() > few.said(), few + " " + many);
        assertTrue(many.widthKelvin() < 0.75 * few.widthKelvin(), few + " " + many);
        assertTrue(many.errorKelvin() < few.errorKelvin() && many.errorKelvin() < 0.3, few + " " + many);
    }

    @Test
    void fiveBatchesAreTooFewForEveryMaker() {
        for (Doses doses : Doses.values()) {
            long tooFew = IntStream.range(0, MAKERS)
                    .mapToObj(n -> LearnedLimit.of(KnownHarm.maker(n, 5, doses)))
                    .filter(l -> l.learned().says() == Says.TOO_FEW_BATCHES)
                    .count();
            assertEquals(MAKERS, tooFew);
        }
    }
}
