package fifthform.simulator.tube;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The pretended tube against what can be worked out by hand. */
class TubeTest {
    private static final TubeCup CUP = new TubeCup(4, 12, 0.35, 0.4, 0.45, 0.1, 0.04, 4, 0);

    /** Too warm for any crystal, it cools as its slowest mode says: its time constant is the one it was given. */
    @Test
    void coolsWithItsTimeConstantWhereNothingCrystallises() {
        Tube tube = new Tube(CUP, sample(0, 12, 50));
        tube.cool(32, 480);
        double before = tube.axisCelsius() - 32;
        tube.cool(32, 240);
        assertEquals(StrictMath.exp(-1), (tube.axisCelsius() - 32) / before, 0.005);
    }

    /** A body of the same shape cools with the square of its length, so with the mass to the power of two thirds. */
    @Test
    void moreChocolateCoolsMoreSlowly() {
        Tube tube = new Tube(CUP, sample(0, 24, 50));
        tube.cool(32, 900);
        double before = tube.axisCelsius() - 32;
        tube.cool(32, 240 * StrictMath.pow(2, 2.0 / 3));
        assertEquals(StrictMath.exp(-1), (tube.axisCelsius() - 32) / before, 0.03);
    }

    /** Everything that crystallises warms the sample: insulated, a tenth of the fat by 0.32 · 0.1 · 175 / 1.63 = 3.4 K. */
    @Test
    void crystallisingSetsItsHeatFree() {
        TubeCup tight = new TubeCup(8, 12, 0.05, 0.9, 0.5, 0, 0, 4, 0);
        Tube tube = new Tube(tight, sample(0.05, 12, 26));
        double solids = tube.solidFraction();
        double bath = 26;
        // The bath follows the sample, so nothing flows out.
        for (int i = 0; i < 240; i++) {
            tube.cool(bath, 0.5);
            bath = tube.axisCelsius();
        }
        double expected = 0.32 * 175 / 1.63 * (tube.solidFraction() - solids);
        assertTrue(tube.solidFraction() > solids + 0.02);
        assertEquals(expected, tube.axisCelsius() - 26, 0.05 * expected);
    }

    @Test
    void theSameLuckGivesTheSameReadings() {
        TubeTrial trial =
                TubeTrial.drawn(CUP, FatMake.OF_THE_TABLES, 0.32, 0.02, TubeTrouble.STIRRED, new SplittableRandom(3));
        assertEquals(
                trial.run(new SplittableRandom(4)).readings(),
                trial.run(new SplittableRandom(4)).readings());
    }

    private static TubeSample sample(double seed, double grams, double startCelsius) {
        return new TubeSample(FatMake.OF_THE_TABLES, 0.32, seed, grams, startCelsius);
    }
}
