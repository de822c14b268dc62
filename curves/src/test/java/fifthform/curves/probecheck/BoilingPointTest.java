package fifthform.curves.probecheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Boiling points and pressures against what is published. */
class BoilingPointTest {
    /** IAPWS R7-97(2012), table 36: the release's own values for checking a program. */
    @ParameterizedTest
    @CsvSource({"100, 372.755919", "1000, 453.035632", "10000, 584.149488"})
    void agreesWithTheReleaseToTheLastDigit(double kilopascals, double kelvin) {
        assertEquals(kelvin, BoilingPoint.celsius(kilopascals) + 273.15, 5e-7);
    }

    /** Every row of this project's reference table. */
    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheReferenceTable(String row) {
        String[] cells = row.split(",", -1);
        double kilopascals = Double.parseDouble(cells[2]);
        double celsius = Double.parseDouble(cells[3]);
        assertEquals(celsius, BoilingPoint.celsius(kilopascals), 0.01);
        if (!cells[0].equals("altitude")) return;
        assertEquals(kilopascals, StandardAir.kilopascals(Double.parseDouble(cells[1])), 0.001);
        assertEquals(Double.parseDouble(cells[1]), StandardAir.altitudeMetres(kilopascals), 0.2);
    }

    static List<String> rows() {
        try (BufferedReader text = new BufferedReader(new InputStreamReader(
                BoilingPointTest.class.getResourceAsStream("/reference/boiling_point.csv"), StandardCharsets.UTF_8))) {
            List<String> rows = text.lines()
                    .filter(line -> line.matches("(pressure|altitude|check),.*"))
                    .toList();
            assertTrue(rows.size() > 70, "the table has lost rows");
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The reference tables' README: ±1 kPa of weather is about ±0.28 K. */
    @Test
    void aKilopascalIsAboutAQuarterOfAKelvin() {
        assertEquals(0.28, BoilingPoint.slopeKelvinPerKilopascal(101.325), 0.005);
    }

    @Test
    void refusesPressuresThatHaveNoBoilingPoint() {
        assertThrows(IllegalArgumentException.class, () -> BoilingPoint.celsius(0.5));
        assertThrows(IllegalArgumentException.class, () -> BoilingPoint.celsius(23_000));
        assertThrows(IllegalArgumentException.class, () -> BoilingPoint.celsius(Double.NaN));
    }
}
