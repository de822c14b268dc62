package fifthform.curves.thermocouple;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.reference.Table;
import fifthform.curves.thermocouple.Budget.Part;
import fifthform.curves.thermocouple.Budget.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Against {@code cold_junction.csv}: terminal EMFs, and what converters with one slope read. */
class SensorTest {
    private static final OptionalDouble UNTOLD = OptionalDouble.empty();

    /** A row of the table; temperatures in °C. */
    record Row(
            ThermocoupleType type, double tip, double junction, double terminalMillivolts, double read, double slope) {
        static Row of(List<String> cells) {
            return new Row(
                    ThermocoupleType.valueOf(cells.get(0)),
                    Double.parseDouble(cells.get(1)),
                    Double.parseDouble(cells.get(2)),
                    Double.parseDouble(cells.get(3)),
                    Double.parseDouble(cells.get(5)),
                    Double.parseDouble(cells.get(6)));
        }
    }

    static Stream<Row> rows() {
        return Table.read("cold_junction.csv").rows().stream().map(Row::of);
    }

    @Test
    void theTableIsThere() {
        assertEquals(40, rows().count());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void emfsAddAndTemperaturesDoNot(Row row) {
        double terminal = row.type().emfMillivolts(row.tip()) - row.type().emfMillivolts(row.junction());
        assertEquals(row.terminalMillivolts(), terminal, 1e-6);
        // The table's EMF has six decimals: half of the last is 2e-5 K at the flattest slope.
        assertEquals(
                row.tip(),
                row.type().tipCelsius(row.terminalMillivolts(), row.junction()).orElseThrow(),
                2e-5);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void oneSlopeIsUndone(Row row) {
        Sensor sensor = new Sensor(Optional.of(row.type()), ToleranceClass.UNKNOWN, Converter.MAX31855);
        assertEquals(
                row.slope(),
                1000 * Converter.MAX31855.slopeMillivoltsPerKelvin(row.type()).orElseThrow(),
                1e-9);
        double tip = sensor.tipCelsius(row.read(), OptionalDouble.of(row.junction()), UNTOLD);
        // The table's reading has four decimals; a steeper converter slope magnifies the half of the last.
        assertEquals(row.tip(), tip, 1.5e-4);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theEmfOnTheLineMakesTheTemperature(Row row) {
        Sensor sensor = new Sensor(Optional.of(row.type()), ToleranceClass.UNKNOWN, Converter.MILLIVOLTS);
        OptionalDouble junction = OptionalDouble.of(row.junction());
        double tip = sensor.tipCelsius(99, junction, OptionalDouble.of(row.terminalMillivolts()));
        assertEquals(row.tip(), tip, 2e-5);
        assertEquals(99, sensor.tipCelsius(99, junction, UNTOLD));
    }

    /** Nothing is undone where type, converter or the junction with which it reckoned is not known. */
    @Test
    void whatIsNotKnownIsNotCorrected() {
        OptionalDouble junction = OptionalDouble.of(20);
        assertEquals(31.25, Sensor.UNKNOWN.tipCelsius(31.25, junction, OptionalDouble.of(1)));
        assertEquals(31.25, known(Converter.MAX31855).tipCelsius(31.25, UNTOLD, UNTOLD));
        assertEquals(31.25, known(Converter.MAX6675).tipCelsius(31.25, junction, UNTOLD));
        assertEquals(31.25, known(Converter.MAX31856).tipCelsius(31.25, junction, OptionalDouble.of(1)));
        assertEquals(31.25, known(Converter.UNKNOWN).tipCelsius(31.25, junction, UNTOLD));
        Sensor noType = new Sensor(Optional.empty(), ToleranceClass.CLASS_1, Converter.MAX31855);
        assertEquals(31.25, noType.tipCelsius(31.25, junction, UNTOLD));
        assertEquals(31.25, known(Converter.MAX31855).tipCelsius(31.25, OptionalDouble.of(-400), UNTOLD));
    }

    /** IEC 60584-1, as {@code tolerance.csv} has it; class 3 ends at 40 °C and gives way to class 2. */
    @ParameterizedTest
    @CsvSource({
        "K, CLASS_1, 31.5, 1.5",
        "K, CLASS_1, 500, 2.0",
        "K, CLASS_2, 31.5, 2.5",
        "K, CLASS_2, 400, 3.0",
        "K, CLASS_3, -200, 3.0",
        "K, CLASS_3, 45, 2.5",
        "K, UNKNOWN, 31.5, 2.5",
        "T, CLASS_1, 31.5, 0.5",
        "T, CLASS_1, 150, 0.6",
        "T, CLASS_2, 100, 1.0",
        "T, CLASS_2, 150, 1.125",
        "T, CLASS_3, 31.5, 1.0",
        "T, CLASS_3, 100, 1.0",
        "J, CLASS_3, 31.5, 2.5",
        "E, CLASS_2, 31.5, 2.5",
        "N, CLASS_1, 31.5, 1.5"
    })
    void toleranceIsTheGreaterOfTwoLimits(ThermocoupleType type, ToleranceClass c, double celsius, double kelvin) {
        assertEquals(kelvin, c.limitKelvin(type, celsius), 1e-12);
    }

    /** By hand: 2.5/√3; tip 2/√3, junction 2/√3 times 40.518/40.743 (slopes at 25 and 31.5 °C of the printed tables). */
    @Test
    void theUncheckedPartsOfACorrectedReading() {
        List<Part> parts = known(Converter.MAX31855).parts(31.5, OptionalDouble.of(25));
        assertEquals(
                List.of(Source.TOLERANCE, Source.JUNCTION),
                parts.stream().map(Part::source).toList());
        assertEquals(1.4434, parts.get(0).standardKelvin(), 1e-4);
        assertEquals(1.6284, parts.get(1).standardKelvin(), 1e-4);
    }

    /**
     * Where one slope cannot be undone it is one more limit. By hand from the printed table: at a 15 °C junction K reads
     * 15 + (1.264 − 0.597)/0.041276 − 31.5 = −0.33 K wrong, more than the +0.0 of 40 °C; with ±2 and ±2 K that is 1.644 K.
     */
    @Test
    void theUncheckedPartsOfAReadingThatCannotBeCorrected() {
        Part untold = known(Converter.MAX31855).parts(31.5, UNTOLD).get(1);
        assertEquals(1.644, untold.standardKelvin(), 0.002);
        assertEquals(untold, Sensor.UNKNOWN.parts(31.5, UNTOLD).get(1));
        assertEquals(
                untold,
                known(Converter.UNKNOWN).parts(31.5, OptionalDouble.of(25)).get(1));
        assertEquals(
                untold,
                known(Converter.MAX31855).parts(31.5, OptionalDouble.of(1e6)).get(1));
    }

    /** 1.5/√3 with its junction; 0.0015 · 31.5 and 0.7 · 40.518/40.743, over √3. */
    @Test
    void convertersThatLineariseAddOnlyTheirLimits() {
        OptionalDouble junction = OptionalDouble.of(25);
        assertEquals(
                0.8660, known(Converter.MCP9600).parts(31.5, junction).get(1).standardKelvin(), 1e-4);
        assertEquals(
                0.4028, known(Converter.MAX31856).parts(31.5, junction).get(1).standardKelvin(), 1e-4);
    }

    @ParameterizedTest
    @EnumSource
    void everyConverterHasItsFigures(Converter converter) {
        assertTrue(converter.tipLimitKelvin(31.5) > 0);
        for (ThermocoupleType type : ThermocoupleType.values()) {
            Sensor sensor = new Sensor(Optional.of(type), ToleranceClass.UNKNOWN, converter);
            for (double celsius = -20; celsius <= 150; celsius += 10) {
                assertEquals(2, sensor.parts(celsius, UNTOLD).size());
                assertEquals(2, sensor.parts(celsius, OptionalDouble.of(25)).size());
            }
        }
    }

    private static Sensor known(Converter converter) {
        return new Sensor(Optional.of(ThermocoupleType.K), ToleranceClass.CLASS_2, converter);
    }
}
