package fifthform.monitor.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.thermocouple.Budget;
import fifthform.curves.thermocouple.Budget.Source;
import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The worked example of DEVELOPERS.md says what the program reckons, and a pocket calculator agrees. */
class BudgetPageTest {
    private static final String SECTION =
            House.section(House.page("DEVELOPERS.md"), "How far a reading can be trusted");
    private static final List<List<String>> ROWS = House.rows(SECTION);
    private static final ThermocoupleType K = ThermocoupleType.K;
    private static final Sensor SENSOR = new Sensor(Optional.of(K), ToleranceClass.CLASS_2, Converter.MAX31855);

    private final double readCelsius = stated("The line says ([\\d.]+) °C");
    private final double junctionCelsius = stated("cold junction ([\\d.]+) °C");
    private final double slopeMillivolts = stated("one slope, ([\\d.]+) mV/K");
    private final double stepKelvin = stated("in steps of ([\\d.]+) °C");
    private final double noiseKelvin = stated("scatter by ([\\d.]+) K");
    private final double tipCelsius =
            SENSOR.tipCelsius(readCelsius, OptionalDouble.of(junctionCelsius), OptionalDouble.empty());

    @Test
    void theThreeStepsAreThoseOfTheProgram() {
        assertEquals(
                slopeMillivolts, Converter.MAX31855.slopeMillivoltsPerKelvin(K).orElseThrow(), 1e-9);
        double terminal = slopeMillivolts * (readCelsius - junctionCelsius);
        assertEquals(stated("25\\.00\\) = ([\\d.]+) mV"), rounded("%.5f", terminal));
        assertEquals(stated("printed table, ([\\d.]+) mV"), rounded("%.5f", K.emfMillivolts(junctionCelsius)));
        double together = stated("Together ([\\d.]+) mV");
        assertEquals(together, rounded("%.5f", terminal + K.emfMillivolts(junctionCelsius)));
        double low = stated("table has ([\\d.]+) mV at 31 °C");
        double high = stated("and ([\\d.]+) mV at 32 °C");
        assertEquals(low, rounded("%.5f", K.emfMillivolts(31)));
        assertEquals(high, rounded("%.5f", K.emfMillivolts(32)));
        double byHand = 31 + (together - low) / (high - low);
        assertEquals(stated("gives ([\\d.]+) °C"), rounded("%.2f", byHand));
        assertEquals(stated("gives ([\\d.]+) °C"), rounded("%.2f", tipCelsius));
        assertEquals(stated("was ([\\d.]+) K too low"), rounded("%.2f", tipCelsius - readCelsius));
        double share = K.slopeMillivoltsPerKelvin(junctionCelsius) / K.slopeMillivoltsPerKelvin(tipCelsius);
        assertEquals(stated("the junction is ([\\d.]+) K at the tip"), rounded("%.3f", share));
    }

    /** Each figure as the program has it, and as a calculator makes it from what the row says. */
    @Test
    void theUncheckedColumnIsThatOfTheProgram() {
        Budget budget = budget(Correction.UNCHECKED);
        assertEquals(cell("tolerance", 2), text("%.3f", part(budget, Source.TOLERANCE)));
        double tip = number("EMF to degrees", 2);
        double junction = number("its cold junction", 2);
        assertEquals(part(budget, Source.JUNCTION), Math.sqrt(tip * tip + junction * junction), 0.001);
        assertEquals("±2.5 K / √3", cell("tolerance", 1));
        assertEquals(cell("tolerance", 2), text("%.3f", 2.5 / Math.sqrt(3)));
        assertEquals("±2 K / √3", cell("EMF to degrees", 1));
        assertEquals(cell("EMF to degrees", 2), text("%.3f", 2 / Math.sqrt(3)));
        assertEquals("±2 K · 0.994 / √3", cell("its cold junction", 1));
        assertEquals(cell("its cold junction", 2), text("%.3f", 2 * 0.994 / Math.sqrt(3)));
        assertEquals("0.25 K / √12", cell("last digit", 1));
    }

    @ParameterizedTest
    @CsvSource({"2, false", "3, true", "4, true"})
    void theWholeIsTheRootOfTheSumOfTheSquares(int column, boolean checked) {
        Correction correction = checked
                ? new Correction(1, 0, number("what the check left", column), Optional.of(Instant.EPOCH))
                : Correction.UNCHECKED;
        Budget budget = budget(correction);
        assertEquals(cell("last digit", column), text("%.3f", part(budget, Source.RESOLUTION)));
        assertEquals(cell("noise", column), text("%.3f", part(budget, Source.NOISE)));
        assertEquals(cell("whole", column), text("%.3f", budget.standardKelvin()));
        assertEquals(cell("shown", column), "±" + text("%.1f", budget.expandedKelvin()));
        double squares = 0;
        for (List<String> row : ROWS.subList(0, 6)) {
            double kelvin = row.get(column).isEmpty() ? 0 : Double.parseDouble(row.get(column));
            squares += kelvin * kelvin;
        }
        assertTrue(squares > 0);
        assertEquals(number("whole", column), Math.sqrt(squares), 0.001);
    }

    private Budget budget(Correction correction) {
        return new ProbeSetup(new ProbeId("bowl"), Role.BOWL, "text-lines", "page", correction, 4, SENSOR)
                .budget(tipCelsius, OptionalDouble.of(junctionCelsius), stepKelvin / Math.sqrt(12), noiseKelvin);
    }

    private static double part(Budget budget, Source source) {
        return budget.parts().stream()
                .filter(part -> part.source() == source)
                .findFirst()
                .orElseThrow()
                .standardKelvin();
    }

    private static String cell(String name, int column) {
        return ROWS.stream()
                .filter(row -> row.get(0).contains(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row about " + name))
                .get(column);
    }

    private static double number(String name, int column) {
        return Double.parseDouble(cell(name, column));
    }

    private static double stated(String expression) {
        return Double.parseDouble(House.matches(expression, SECTION).stream()
                .findFirst()
                .orElseThrow(() -> new AssertionError("the page does not say: " + expression))
                .group(1));
    }

    private static double rounded(String format, double value) {
        return Double.parseDouble(text(format, value));
    }

    private static String text(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
