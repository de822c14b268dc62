package fifthform.curves.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.reference.Table;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Setup;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The forecast's formulas against solutions that are not ours. */
class HeatBalanceTest {
    /**
     * Newton's law of cooling, {@code T = B + (T₀ − B) e^{−kt}}: the lumped-capacitance solution of heat transfer
     * textbooks (Incropera and DeWitt, chapter 5; from memory).
     */
    @ParameterizedTest
    @CsvSource({"27, 45, 0.004", "31, 40, 0.001", "45, 16, 0.006", "20, 65, 0.01"})
    void overWaterItIsNewtonsLaw(double celsius, double bath, double perSecond) {
        Course course = new Course(Place.BATH, celsius, perSecond * (bath - celsius), 0.003, 36, bath);
        for (double t = 0; t <= 600; t += 7) {
            double newton = bath + (celsius - bath) * Math.exp(-perSecond * t);
            assertEquals(newton, course.at(t), 1e-9, "after " + t + " s");
            assertEquals(perSecond * (bath - newton), course.rateAt(t), 1e-12);
        }
    }

    /** Two lumps, integrated by Commons Math: chocolate and wall exchange heat, the chocolate loses some to the room. */
    private static double[] twoLumps(
            double chocolate, double wall, double followsSeconds, double wallShare, double loss, double seconds) {
        FirstOrderDifferentialEquations balance = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] dot) {
                double exchange = (y[1] - y[0]) / followsSeconds;
                dot[0] = exchange - loss;
                dot[1] = -exchange / wallShare;
            }
        };
        double[] y = {chocolate, wall};
        if (seconds > 0) {
            new DormandPrince853Integrator(1e-6, 10, 1e-10, 1e-10).integrate(balance, 0, y, seconds, y);
        }
        return y;
    }

    @ParameterizedTest
    @CsvSource({"30.5, 36, 200, 0.2", "31, 33, 400, 0.1", "30, 40, 120, 0.45", "28, 20, 300, 0.3"})
    void theCoastIsWhatTheWallStillHolds(double chocolate, double wall, double follows, double share) {
        double coastSeconds = follows * share / (1 + share);
        Course course = new Course(Place.TABLE, chocolate, (wall - chocolate) / follows, 0, coastSeconds, Double.NaN);
        for (double t = 0; t <= 300; t += 10) {
            double[] lumps = twoLumps(chocolate, wall, follows, share, 0, t);
            assertEquals(lumps[0], course.at(t), 1e-6, "after " + t + " s");
            double heat = chocolate + share * wall;
            assertEquals(heat, lumps[0] + share * lumps[1], 1e-6, "the integration keeps its heat");
        }
        // Both end at (cC·C + cW·W)/(cC + cW).
        double end = (chocolate + share * wall) / (1 + share);
        assertEquals(end - chocolate, course.at(30 * coastSeconds) - chocolate, 1e-3 * Math.abs(end - chocolate));
        // What is forecast as the turn leaves out the last 2 % (e⁻⁴) of a coast that nothing opposes.
        double turn = Coast.turnKelvin(coastSeconds, (wall - chocolate) / follows, 0);
        assertEquals((end - chocolate) * (1 - Math.exp(-4)), turn, 1e-9);
    }

    /** With a loss to the room the chocolate turns where both rates are equal: time and peak against the integration. */
    @ParameterizedTest
    @CsvSource({"30.5, 36, 200, 0.2", "31, 33, 400, 0.1", "30, 40, 120, 0.3"})
    void theTurnIsWhereTheLumpsTurn(double chocolate, double wall, double follows, double share) {
        double loss = 0.3 / 60;
        double coastSeconds = follows * share / (1 + share);
        double inflow = (wall - chocolate) / follows;
        double highest = chocolate;
        double when = 0;
        for (double t = 0; t <= 400; t += 1) {
            double there = twoLumps(chocolate, wall, follows, share, loss, t)[0];
            if (there > highest) when = t;
            highest = Math.max(highest, there);
        }
        double seconds = Coast.turnSeconds(coastSeconds, inflow, loss);
        // The formula lets the room take from the chocolate alone; in truth the wall pays its share, 4 % of the coast
        // here.
        double coast = highest - chocolate;
        assertEquals(coast, Coast.turnKelvin(coastSeconds, inflow, loss), 0.07 * coast);
        assertEquals(when, seconds, 0.15 * when);
    }

    @Test
    void aBowlThatOnlyLosesHeatHasNoTurnAhead() {
        double loss = 0.3 / 60;
        assertEquals(0, Coast.turnSeconds(36, 0, loss));
        assertEquals(0, Coast.turnSeconds(36, -0.9 * loss, loss), "falling as the room makes it");
        assertEquals(0, Coast.turnSeconds(36, 0, 0));
        assertEquals(0, Coast.turnKelvin(36, -1.1 * loss, loss), 0.05, "and a little faster, a little further");
    }

    /**
     * The first guesses against the reference schedule's lumped bowls ({@code coast_after_lifting.csv}): the rate at
     * 30.5 °C is the rate at 28 °C in proportion to the distance from the bath.
     */
    @ParameterizedTest
    @CsvSource({"STEEL, steel, 21", "GLASS, glass, 65"})
    void theFirstGuessIsTheWallsHeatAndAboutFifteenSeconds(BowlMaterial material, String bowl, double stated) {
        Table rows = Table.read("coast_after_lifting.csv").where("bowl", bowl);
        double[] rates = rows.where("quantity", "rate at 28 C").numbers("value");
        double[] coasts =
                rows.where("quantity", "coast after lifting at 30.5 C").numbers("value");
        double[] baths = rows.where("quantity", "rate at 28 C").numbers("bath_C");
        assertEquals(10, rates.length);
        double[] wallSeconds = new double[rates.length];
        for (int i = 0; i < rates.length; i++) {
            double rate = rates[i] / 60 * (baths[i] - 30.5) / (baths[i] - 28);
            wallSeconds[i] = coasts[i] / rate;
        }
        double mean = Arrays.stream(wallSeconds).average().orElseThrow();
        assertEquals(stated, mean, 1, "coast times from the wall alone: " + Arrays.toString(wallSeconds));
        assertTrue(Arrays.stream(wallSeconds).allMatch(s -> Math.abs(s - stated) < 2), Arrays.toString(wallSeconds));
        Setup setup = TestRecipes.setup();
        Setup with = new Setup(
                setup.recipe(),
                new Bowl("story", material, OptionalDouble.empty(), Optional.empty()),
                setup.probes(),
                setup.reactionTime(),
                setup.bathCelsius(),
                setup.roomCelsius(),
                setup.origin(),
                setup.approach(),
                setup.seedGrams(),
                Beginning.WHOLE,
                Optional.empty());
        assertEquals(mean + 15, Coast.before(with).seconds(), 1.5);
    }
}
