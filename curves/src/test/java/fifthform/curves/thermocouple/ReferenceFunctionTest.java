package fifthform.curves.thermocouple;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.constants.PackedTable;
import fifthform.curves.reference.Table;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Against NIST Monograph 175 and IEC 60584-1, as {@code its90_points.csv} and the published bands have them. */
class ReferenceFunctionTest {
    private static final Table POINTS = Table.read("its90_points.csv");

    @ParameterizedTest
    @EnumSource
    void theComputedRowsAreMet(ThermocoupleType type) {
        Table mine = POINTS.where("type", type.name());
        double[] celsius = mine.numbers("t_C");
        double[] millivolts = mine.numbers("emf_mV_computed");
        double[] microvolts = mine.numbers("seebeck_uV_per_K");
        assertEquals(17, celsius.length);
        for (int i = 0; i < celsius.length; i++) {
            assertEquals(millivolts[i], type.emfMillivolts(celsius[i]), 1e-6, type + " at " + celsius[i]);
            assertEquals(
                    microvolts[i],
                    1000 * type.slopeMillivoltsPerKelvin(celsius[i]),
                    0.0005001,
                    type + " at " + celsius[i]);
        }
    }

    @Test
    void thePrintedRowsAreMet() {
        int seen = 0;
        int printed = POINTS.columns().indexOf("table_mV_seen");
        for (List<String> row : POINTS.rows()) {
            if (row.get(printed).isEmpty()) continue;
            ThermocoupleType type = ThermocoupleType.valueOf(row.get(0));
            double celsius = Double.parseDouble(row.get(1));
            assertEquals(Double.parseDouble(row.get(printed)), type.emfMillivolts(celsius), 0.0005, () -> "" + row);
            seen++;
        }
        assertEquals(51, seen);
    }

    /** Ends of the ranges, as the printed tables have them (IEC 60584-1; from memory), to their last digit. */
    @ParameterizedTest
    @CsvSource({
        "K, -270, -6.458", "K, 1372, 54.886", "J, -210, -8.095", "J, 1200, 69.553", "T, -270, -6.258",
        "T, 400, 20.872", "N, -270, -4.345", "N, 1300, 47.513", "E, -270, -9.835", "E, 1000, 76.373"
    })
    void theEndsAreThoseOfTheTables(ThermocoupleType type, double celsius, double millivolts) {
        assertEquals(millivolts, type.emfMillivolts(celsius), 0.0005);
    }

    /** Every tenth of a kelvin, and at random between. */
    @ParameterizedTest
    @EnumSource
    void thereAndBackIsTheSame(ThermocoupleType type) {
        SplittableRandom random = new SplittableRandom(7);
        double low = type.lowestCelsius();
        double high = type.highestCelsius();
        for (double celsius = low; celsius <= high; celsius += 0.1) {
            assertEquals(celsius, type.celsius(type.emfMillivolts(celsius)), 1e-6);
            double between = random.nextDouble(low, high);
            assertEquals(between, type.celsius(type.emfMillivolts(between)), 1e-6);
        }
        assertEquals(low, type.celsius(type.emfMillivolts(low)), 1e-6);
        assertEquals(high, type.celsius(type.emfMillivolts(high)), 1e-6);
        assertEquals(0, type.celsius(0), 1e-6);
    }

    /** The slope is that of the function: central differences of 0.01 K. */
    @ParameterizedTest
    @EnumSource
    void theSlopeIsThatOfTheFunctionAndAboveZero(ThermocoupleType type) {
        for (double celsius = type.lowestCelsius() + 0.013; celsius < type.highestCelsius() - 0.01; celsius += 0.7) {
            double slope = (type.emfMillivolts(celsius + 0.01) - type.emfMillivolts(celsius - 0.01)) / 0.02;
            assertEquals(slope, type.slopeMillivoltsPerKelvin(celsius), 2e-5, type + " at " + celsius);
            assertTrue(type.slopeMillivoltsPerKelvin(celsius) > 0, type + " at " + celsius);
        }
    }

    /** The inverse polynomials alone lie within the bands that were published with them. */
    @ParameterizedTest
    @EnumSource
    void theFirstGuessLiesWithinItsPublishedBand(ThermocoupleType type) {
        PackedTable mine = PackedTable.read("thermocouple/its90_inverse.csv")
                .where("type", type.name())
                .where("order", "1");
        assertTrue(mine.rows().size() >= 2);
        for (List<String> row : mine.rows()) {
            double lowError = 0;
            double highError = 0;
            double from = mine.number(row, "range_lo_C");
            double to = mine.number(row, "range_hi_C");
            for (double celsius = from + 0.05; celsius < to; celsius += 0.05) {
                double error = type.guessCelsius(type.emfMillivolts(celsius)) - celsius;
                lowError = Math.min(lowError, error);
                highError = Math.max(highError, error);
            }
            // The bands were published with two decimals.
            assertTrue(lowError >= mine.number(row, "stated_error_lo_C") - 0.005, row + " " + lowError);
            assertTrue(highError <= mine.number(row, "stated_error_hi_C") + 0.005, row + " " + highError);
            assertEquals(mine.number(row, "measured_error_lo_C"), lowError, 0.0011, () -> "" + row);
            assertEquals(mine.number(row, "measured_error_hi_C"), highError, 0.0011, () -> "" + row);
        }
    }

    @ParameterizedTest
    @EnumSource
    void outsideItsRangeATypeSaysNothing(ThermocoupleType type) {
        double below = type.lowestCelsius() - 0.01;
        double above = type.highestCelsius() + 0.01;
        assertThrows(IllegalArgumentException.class, () -> type.emfMillivolts(below));
        assertThrows(IllegalArgumentException.class, () -> type.slopeMillivoltsPerKelvin(above));
        assertThrows(IllegalArgumentException.class, () -> type.emfMillivolts(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> type.celsius(100));
        assertThrows(IllegalArgumentException.class, () -> type.celsius(-10));
        assertTrue(type.tipCelsius(0, -300).isEmpty());
        assertTrue(type.tipCelsius(90, 25).isEmpty());
        assertTrue(type.tipCelsius(Double.NaN, 25).isEmpty());
    }
}
