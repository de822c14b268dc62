package fifthform.curves.plan;

import static fifthform.curves.plan.Table.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Row by row against the table of bath examples: computed from handbook heat capacities (Beckett ed. 2009, pp. 667–668) by
 * somebody else's program; agreed at 1e-9 relative.
 */
class BathExamplesTest {
    static List<Map<String, String>> rows() {
        return Table.rows("bath_examples.csv");
    }

    @Test
    void theTableHasAllItsRows() {
        assertEquals(29, rows().size());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyRowIsReached(Map<String, String> row) {
        double expected = number(row, "value");
        assertEquals(expected, value(row), 1e-9 * expected, row.get("id"));
    }

    private static double value(Map<String, String> row) {
        Bowlful bowlful = new Bowlful(
                number(row, "m_choc_kg"),
                number(row, "fat_fraction"),
                number(row, "m_bowl_kg"),
                number(row, "c_bowl_J_kgK"));
        double from = number(row, "T1_C");
        double solid = number(row, "dsolid_fraction_of_fat");
        return switch (row.get("quantity")) {
            case "T_eq" -> Calorimetry.equilibriumCelsius(bowlful, from, bath(row, number(row, "T_water_C")), solid);
            case "m_w" ->
                Calorimetry.waterKilograms(bowlful, from, number(row, "T2_C"), number(row, "T_water_C"), solid);
            case "T_w_max" -> Calorimetry.warmestBathCelsius(bowlful, from, number(row, "T2_C"), bath(row, 0), solid);
            case "m_w_max" ->
                Calorimetry.mostWaterKilograms(bowlful, from, number(row, "T2_C"), number(row, "T_water_C"), 0);
            case "t" ->
                Calorimetry.seconds(
                        bowlful, from, number(row, "T2_C"), bath(row, number(row, "T_water_C")), number(row, "UA_W_K"));
            default -> throw new AssertionError(row);
        };
    }

    private static WaterBath bath(Map<String, String> row, double celsius) {
        return new WaterBath(number(row, "m_water_kg"), celsius, number(row, "m_pan_kg"), number(row, "c_pan_J_kgK"));
    }
}
