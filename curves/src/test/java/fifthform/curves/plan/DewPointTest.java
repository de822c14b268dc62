package fifthform.curves.plan;

import static fifthform.curves.plan.Table.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Row by row against the dew points computed with both published sets of constants, at 1e-9 relative. */
class DewPointTest {
    static List<Map<String, String>> rows() {
        return Table.rows("dew_point.csv");
    }

    @Test
    void theTableHasAllItsRows() {
        assertEquals(12, rows().size());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyRowIsReached(Map<String, String> row) {
        double air = number(row, "T_air_C");
        double humidity = number(row, "RH_pct");
        agree(number(row, "T_dew_wmo_C"), DewPoint.WMO.celsius(air, humidity));
        agree(number(row, "T_dew_ae_C"), DewPoint.ALDUCHOV_ESKRIDGE.celsius(air, humidity));
        agree(number(row, "e_wmo_hPa"), DewPoint.WMO.hectopascals(air, humidity));
    }

    private static void agree(double expected, double value) {
        assertEquals(expected, value, Math.abs(expected) * 1e-9);
    }
}
