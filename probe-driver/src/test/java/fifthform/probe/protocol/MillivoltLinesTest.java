package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.check.Problem;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The settings; what lines mean without any stands in the tape. */
class MillivoltLinesTest {
    /** Rows of {@code cold_junction.csv} among the tests of curves: 31.5 °C at the tip. */
    @ParameterizedTest
    @CsvSource({
        "K, 0.264109, 25, 0.000025, 0.025",
        "T, 0.266225, 25, 0.000025, 0.025",
        "J, -0.182497, 35, 0.00002, 0.02",
        "N, 0.308320, 20, 0.00004, 0.04",
        "E, 0.398133, 25, 0.00002, 0.02"
    })
    void theTypeMakesTheTemperature(String type, String emf, String junction, double tolerance, double step) {
        Signal.Measured m = measured(Map.of("type", type), "emf=" + emf + " cj=" + junction + ".00000");
        assertEquals(31.5, m.tipCelsius(), tolerance);
        assertEquals(Double.parseDouble(emf), m.emfMillivolts().orElseThrow(), 1e-9);
        assertEquals(Double.parseDouble(junction), m.junctionCelsius().orElseThrow());
        // A millionth of a millivolt over the slope: two hundredths of a thousandth of a kelvin, and some.
        assertEquals(step / 1000, m.resolutionKelvin(), 1.5e-5);
    }

    /** 0.001 mV over 0.04074 mV/K (type K at 31.5 °C); the junction's step of 0.0001 K adds nothing. */
    @Test
    void theLastDigitOfTheEmfIsTheResolution() {
        assertEquals(0.024546, measured(Map.of(), "emf=0.264 cj=25.0000").resolutionKelvin(), 1e-5);
        assertEquals(0.24546, measured(Map.of(), "emf=0.26 cj=25.0000").resolutionKelvin(), 1e-4);
    }

    @Test
    void theUnitIsForNumbersWithoutOne() {
        double expected = measured(Map.of(), "emf=0.264 cj=25.0").tipCelsius();
        assertEquals(expected, measured(Map.of("unit", "uv"), "emf=264 cj=25.0").tipCelsius());
        assertEquals(
                expected, measured(Map.of("unit", "uV"), "emf=0.264 mV cj=25.0").tipCelsius());
    }

    @Test
    void bareColumnsMeanWhatTheMakerSays() {
        double expected = measured(Map.of(), "emf=0.264 cj=25.00").tipCelsius();
        assertEquals(
                expected, measured(Map.of("columns", "emf-cj"), "0.264 25.00").tipCelsius());
        assertEquals(
                expected, measured(Map.of("columns", "cj-emf"), "25.00,0.264").tipCelsius());
        assertEquals(
                expected,
                measured(Map.of("columns", "skip-emf-cj"), "17;0,264;25,00").tipCelsius());
        assertEquals(List.of(new Signal.Unreadable(13)), signals(Map.of("columns", "emf-cj"), "\n0.264 25.00 1\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"type=R", "unit=V", "columns=emf", "columns=emf-cj-cj", "columns=a-b", "colour=red"})
    void whatCannotBeUsedIsRefused(String setting) {
        String[] parts = setting.split("=");
        List<Problem> problems = new MillivoltLines()
                .with(Map.of(parts[0], parts[1]))
                .fold(set -> List.of(), refused -> List.copyOf(refused));
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).toString().contains("Nothing was done"), problems::toString);
    }

    @Test
    void theSensorIsKnown() {
        assertEquals(Converter.MILLIVOLTS, set(Map.of()).sensor().converter());
        assertEquals(
                Optional.of(ThermocoupleType.T),
                set(Map.of("type", "t")).sensor().type());
    }

    private static Signal.Measured measured(Map<String, String> settings, String line) {
        List<Signal> signals = signals(settings, "\n" + line + "\n");
        assertEquals(1, signals.size());
        assertTrue(signals.get(0) instanceof Signal.Measured, signals::toString);
        return (Signal.Measured) signals.get(0);
    }

    private static List<Signal> signals(Map<String, String> settings, String text) {
        List<Signal> signals = new ArrayList<>();
        set(settings).newDecoder().feed(text.getBytes(StandardCharsets.UTF_8), signals::add);
        return signals;
    }

    private static ProbeProtocol set(Map<String, String> settings) {
        return new MillivoltLines().with(settings).fold(set -> set, problems -> {
            throw new AssertionError(problems);
        });
    }
}
