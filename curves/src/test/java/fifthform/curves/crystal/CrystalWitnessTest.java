package fifthform.curves.crystal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The plain one-second steps against a solver of high order; source of that: Commons Math. */
class CrystalWitnessTest {
    private static final Kinetics DARK = Kinetics.of(Fat.DARK);
    private static final double STIRRED = 20;

    /** What a batch may do: textbook, warm, long, cold, overshoots short and long, a second melt, never stirred. */
    static List<Programme> programmes() {
        Programme textbook = Programme.temper(27.5, 6);
        return List.of(
                Programme.textbook(),
                textbook,
                textbook.then(92, 31.5),
                Programme.temper(28.5, 6),
                Programme.temper(28.5, 12),
                Programme.temper(29, 20),
                Programme.temper(30, 6),
                Programme.temper(27.5, 15),
                textbook.then(32.5, 33, 42.5, 33),
                textbook.then(32.5, 34, 33.5, 34),
                textbook.then(32.5, 34, 42.5, 34),
                textbook.then(32.5, 35, 35.5, 35),
                textbook.then(34, 36, 40, 31.5, 60, 31.5),
                textbook.then(38, 46, 50, 46, 62, 27.5, 68, 27.5, 72, 31.5));
    }

    @ParameterizedTest
    @MethodSource("programmes")
    void agreesWithinTwoPercentOrTwoInTenThousandOfTheFat(Programme programme) {
        for (double shear : new double[] {0, 5, STIRRED}) {
            Crystals witness = HighOrder.run(DARK, programme, Crystals.SOLID, shear);
            Crystals live = programme.run(DARK, Crystals.SOLID, shear);
            near(witness.formTwo(), live.formTwo());
            near(witness.formFour(), live.formFour());
            near(witness.formFive(), live.formFive());
            near(witness.formSix(), live.formSix());
            near(witness.seedMass(), live.seedMass());
        }
    }

    @Test
    void overcooledAgreesAsWell() {
        // A third of the fat is solid: what matters there is that it is thick.
        Programme cold = Programme.temper(25, 6);
        double witness = HighOrder.run(DARK, cold, Crystals.SOLID, STIRRED).stableSeed();
        near(witness, cold.run(DARK, Crystals.SOLID, STIRRED).stableSeed());
    }

    /** Euler's method is of first order: half the step, half the error. */
    @Test
    void halfTheStepHalvesTheError() {
        Programme programme = Programme.textbook();
        double exact = HighOrder.run(DARK, programme, Crystals.SOLID, STIRRED).formFive();
        double previous = Double.NaN;
        for (double seconds : new double[] {4, 2, 1, 0.5}) {
            double error =
                    programme.run(DARK, Crystals.SOLID, STIRRED, seconds, 0).formFive() - exact;
            System.out.printf("step %.1f s: error %+.2f %% of %.5f%n", seconds, 100 * error / exact, exact);
            if (!Double.isNaN(previous)) assertEquals(2, previous / error, 0.25);
            previous = error;
        }
    }

    @Test
    void theWitnessAgreesWithTheReferencesImplicitSolver() {
        // Row 40 of the reference's check values: 0.0227 within 0.0003 by an implicit solver.
        double five = HighOrder.run(DARK, Programme.textbook(), Crystals.SOLID, STIRRED)
                .formFive();
        assertEquals(0.0227, five, 0.0003);
    }

    private static void near(double witness, double live) {
        double allowed = Math.max(0.02 * witness, 0.0002);
        assertTrue(Math.abs(live - witness) <= allowed, () -> "witness " + witness + ", live " + live);
    }
}
