package fifthform.curves.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Height and length of an overshoot as one number. */
class HeatScaleTest {
    private static final HeatScale DARK = new HeatScale(32, 33.8);

    private static double flat(double celsius, double minutes) {
        return DARK.equivalentCelsius(minutes * DARK.weight(celsius));
    }

    @Test
    void whoStaysInTheRangeHasItsUpperEndHoweverLong() {
        assertEquals(32, flat(31.5, 600), 1e-9);
        assertEquals(32, flat(32, 600), 1e-9);
    }

    @Test
    void threeMinutesAreThemselves() {
        for (double celsius = 32.1; celsius < 38; celsius += 0.1) assertEquals(celsius, flat(celsius, 3), 1e-9);
    }

    @Test
    void higherAndLongerAreMore() {
        for (double celsius = 32.1; celsius < 37; celsius += 0.1) {
            for (double minutes = 0.1; minutes < 100; minutes *= 1.5) {
                assertTrue(flat(celsius + 0.1, minutes) > flat(celsius, minutes));
                assertTrue(flat(celsius, 1.5 * minutes) > flat(celsius, minutes));
            }
        }
    }

    @Test
    void sevenTenthsOfAKelvinCountAsTenTimesAsLong() {
        assertEquals(flat(34.5, 1), flat(33.8, 10), 0.01);
    }

    /**
     * Seed left by the crystal model after overshoots, % of the fat: {@code crystal-model.md}, section 7, rows of the three
     * copies, middle copy. What leaves less must have the greater dose.
     */
    @Test
    void theOrderIsThatOfTheCrystalModel() {
        double[] doses = {flat(33, 10), flat(34, 1), flat(34, 10), flat(35, 3), flat(35, 10)};
        double[] leftPercent = {2.0, 1.3, 0.69, 0.14, 0};
        for (int i = 1; i < doses.length; i++) {
            assertTrue(leftPercent[i] < leftPercent[i - 1]);
            assertTrue(doses[i] > doses[i - 1], "row " + i);
        }
    }

    /** Overshoots after which half of form V is left by the model: all within a quarter kelvin of each other. */
    @ParameterizedTest
    @CsvSource({"33.75, 10", "34.0, 3.1", "34.25, 1.6", "34.5, 0.9", "34.75, 0.54"})
    void whatLeavesHalfIsAboutOneDose(double celsius, double minutes) {
        assertEquals(34.1, flat(celsius, minutes), 0.13);
    }

    @Test
    void aLimitBelowTheRangeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new HeatScale(32, 32));
    }
}
