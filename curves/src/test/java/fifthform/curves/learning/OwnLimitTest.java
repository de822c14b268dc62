package fifthform.curves.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.OwnLimit.Says;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What batches with known heat and outcome say together. How often it is right: LearnedLimitTest of the simulator. */
class OwnLimitTest {
    private static final double PUBLISHED = 33.8;

    private static TriedBatch fine(double dose) {
        return new TriedBatch(dose, new Outcome(OptionalDouble.of(168), OptionalDouble.empty(), Sureness.SURE));
    }

    private static TriedBatch marked(double dose) {
        return new TriedBatch(dose, new Outcome(OptionalDouble.empty(), OptionalDouble.of(24), Sureness.SURE));
    }

    private static OwnLimit learned(TriedBatch... tried) {
        return OwnLimit.learned(PUBLISHED, List.of(tried));
    }

    private static List<TriedBatch> drawn(Random random, int batches) {
        List<TriedBatch> tried = new ArrayList<>();
        for (int i = 0; i < batches; i++) {
            double dose = 32 + 3.5 * random.nextDouble();
            tried.add(random.nextBoolean() ? fine(dose) : marked(dose));
        }
        return tried;
    }

    @Test
    void belowSixBatchesNothingIsClaimedHoweverPlain() {
        List<TriedBatch> tried = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            tried.add(i % 2 == 0 ? fine(32.5) : marked(34.5));
            assertEquals(
                    Says.TOO_FEW_BATCHES, OwnLimit.learned(PUBLISHED, tried).says());
        }
        tried.add(marked(34.6));
        assertEquals(Says.LIMIT, OwnLimit.learned(PUBLISHED, tried).says());
    }

    @Test
    void aPlainCaseIsLearnedBetweenItsSides() {
        OwnLimit limit = learned(
                fine(32),
                fine(32.4),
                fine(32.6),
                fine(32.7),
                marked(33.2),
                marked(33.4),
                marked(33.6),
                marked(34),
                fine(32.9));
        assertEquals(Says.LIMIT, limit.says());
        assertEquals(4, limit.marked());
        assertEquals(33.05, limit.band().middleCelsius(), 0.2);
        assertTrue(limit.band().upperCelsius() < PUBLISHED, limit.band().toString());
        assertEquals(OptionalDouble.of(32.9), limit.hottestCleanCelsius());
        assertEquals(OptionalDouble.of(33.2), limit.coolestMarkedCelsius());
    }

    @Test
    void whereAllAreAlikeItIsKnownFromOneSide() {
        OwnLimit fine = learned(fine(32), fine(32.5), fine(33), fine(34), fine(34), fine(34.2), fine(34.3));
        assertEquals(Says.ALL_CLEAN, fine.says());
        assertTrue(fine.band().lowerCelsius() > fine.before().lowerCelsius() + 0.5);
        OwnLimit all = learned(marked(33), marked(33), marked(33.2), marked(33.5), marked(34), marked(34.5));
        assertEquals(Says.ALL_MARKED, all.says());
        assertTrue(all.band().upperCelsius() < all.before().upperCelsius());
    }

    /** The same heat cannot tell where harm begins, whatever the bars look like. */
    @Test
    void withoutADifferenceInHeatHardlyAnythingIsSaid() {
        OwnLimit limit = learned(
                fine(32), fine(32), marked(32), fine(32.1), marked(32.1), fine(32), fine(32), fine(32.1), fine(32));
        assertEquals(Says.HARDLY_ANYTHING, limit.says());
    }

    @Test
    void beforeAnyBatchItIsThePublishedLimitWithAWideBand() {
        OwnLimit none = learned();
        assertEquals(PUBLISHED, none.band().middleCelsius(), 1e-9);
        assertEquals(2 * 1.645 * 1.2, none.band().widthKelvin(), 0.02);
        assertEquals(none.before(), none.band());
    }

    @Test
    void aHalfBloomedNightmareOfAnySizeHasABand() {
        Random random = new Random(11);
        for (int run = 0; run < 60; run++) {
            OwnLimit limit = OwnLimit.learned(PUBLISHED, drawn(random, random.nextInt(40)));
            Band band = limit.band();
            assertTrue(band.lowerCelsius() < band.middleCelsius() && band.middleCelsius() < band.upperCelsius());
            assertTrue(Math.abs(band.middleCelsius() - PUBLISHED) < 4);
        }
    }

    /**
     * Where bars agree with a limit, one near it that is marked and not fine lowers it. Far below it would not: there it is
     * rather a batch that was lost for another reason.
     */
    @Test
    void marksNearTheLimitLowerIt() {
        Random random = new Random(12);
        for (int run = 0; run < 60; run++) {
            double turn = 33 + random.nextDouble();
            List<TriedBatch> tried = new ArrayList<>();
            for (int i = 0; i < 6 + random.nextInt(20); i++) {
                double dose = 32 + 3 * random.nextDouble();
                tried.add(dose < turn ? fine(dose) : marked(dose));
            }
            double near = turn + 0.8 * (random.nextDouble() - 0.5);
            tried.add(fine(near));
            double withFine = OwnLimit.learned(PUBLISHED, tried).band().middleCelsius();
            tried.set(tried.size() - 1, marked(near));
            double withMarks = OwnLimit.learned(PUBLISHED, tried).band().middleCelsius();
            assertTrue(withMarks < withFine, "run " + run + ": " + withMarks + " over " + withFine);
        }
    }

    @Test
    void theOrderOfBatchesDoesNotCountAndTheSameAnswerComesAgain() {
        List<TriedBatch> tried = drawn(new Random(13), 30);
        Band band = OwnLimit.learned(PUBLISHED, tried).band();
        assertEquals(band, OwnLimit.learned(PUBLISHED, tried).band());
        Collections.reverse(tried);
        assertEquals(
                band.middleCelsius(), OwnLimit.learned(PUBLISHED, tried).band().middleCelsius(), 1e-9);
    }

    /** A chocolate with milk fat has all its temperatures lower; nothing else differs. */
    @Test
    void itMovesWithThePublishedLimit() {
        List<TriedBatch> dark = drawn(new Random(14), 20);
        List<TriedBatch> milk = dark.stream()
                .map(t -> new TriedBatch(t.doseCelsius() - 1.6, t.outcome()))
                .toList();
        double moved = OwnLimit.learned(PUBLISHED - 1.6, milk).band().middleCelsius();
        assertEquals(OwnLimit.learned(PUBLISHED, dark).band().middleCelsius() - 1.6, moved, 1e-9);
    }

    @Test
    void veryManyBatchesEndInNoZero() {
        List<TriedBatch> tried = drawn(new Random(15), 3000);
        assertEquals(OwnLimit.MOST_BATCHES, OwnLimit.learned(PUBLISHED, tried).batches());
        assertTrue(Double.isFinite(OwnLimit.learned(PUBLISHED, tried).band().middleCelsius()));
    }
}
