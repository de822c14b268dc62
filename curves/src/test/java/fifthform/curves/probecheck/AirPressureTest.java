package fifthform.curves.probecheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What makers say of the air, right and wrong. */
class AirPressureTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void aBarometerIsTakenAsItIs() {
        AirPressure air = accepted(AirPressure.from(NONE, of(1013.25), NONE));
        assertEquals(101.325, air.kilopascals(), 1e-9);
        assertTrue(air.basis().isOfTheDay());
    }

    /** 1000 m: 89.875 kPa at 1013.25 hPa at sea level (ISO 2533); a report of 1013.25 must give the same. */
    @Test
    void aWeatherReportIsBroughtUpToTheKitchen() {
        AirPressure report = accepted(AirPressure.from(of(1000), NONE, of(1013.25)));
        assertEquals(89.875, report.kilopascals(), 0.001);
        assertTrue(report.basis().isOfTheDay());
        AirPressure barometer = accepted(AirPressure.from(of(1000), of(898.75), NONE));
        assertTrue(report.sigmaKilopascals() > 2 * barometer.sigmaKilopascals(), "the air between is not known");
    }

    /** This project's reference tables: 0.2 K with the altitude alone, less with the day's pressure. */
    @Test
    void theAltitudeAloneLeavesTheWeather() {
        AirPressure air = accepted(AirPressure.from(of(0), NONE, NONE));
        assertFalse(air.basis().isOfTheDay());
        assertEquals(0.2, Target.boil(air).sigmaKelvin(), 0.02);
        AirPressure day = accepted(AirPressure.from(NONE, of(1013), NONE));
        assertEquals(0.1, Target.boil(day).sigmaKelvin(), 0.02);
    }

    @ParameterizedTest
    @CsvSource({
        "760, 1013 hPa",
        "29.9, 1013 hPa",
        "101.3, 1013 hPa",
        "1.013, 1013 hPa",
        "101325, 1013 hPa",
        "14.7, hectopascals",
        "NaN, hectopascals",
        "-5, hectopascals"
    })
    void aWrongUnitIsNamed(double given, String advice) {
        assertTrue(problem(AirPressure.from(NONE, of(given), NONE)).whatToDo().contains(advice));
        assertTrue(
                problem(AirPressure.from(of(100), NONE, of(given))).whatToDo().contains(advice));
    }

    @Test
    void mountainsMayHaveThinAir() {
        assertEquals(76, accepted(AirPressure.from(of(2370), of(760), NONE)).kilopascals(), 1e-9);
        assertTrue(problem(AirPressure.from(NONE, of(760), NONE)).whatToDo().contains("--altitude"));
        assertTrue(
                problem(AirPressure.from(of(1500), of(1013), NONE)).whatToDo().contains("--sea-level-pressure"));
    }

    @ParameterizedTest
    @CsvSource({"-431", "5501", "30000", "NaN", "Infinity"})
    void nobodyCooksThere(double metres) {
        assertTrue(problem(AirPressure.from(of(metres), NONE, NONE)).whatToDo().contains("feet"));
    }

    @Test
    void whatIsMissingIsAskedFor() {
        assertTrue(problem(AirPressure.from(NONE, NONE, NONE)).whatToDo().contains("--altitude"));
        assertTrue(problem(AirPressure.from(NONE, NONE, of(1013))).whatToDo().contains("--altitude"));
        assertTrue(problem(AirPressure.from(NONE, of(1013), of(1013))).what().contains("Both"));
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private static AirPressure accepted(Parsed<AirPressure> parsed) {
        return parsed.fold(air -> air, problems -> fail(problems.toString()));
    }

    private static Problem problem(Parsed<AirPressure> parsed) {
        return parsed.fold(air -> fail("taken: " + air), problems -> problems.get(0));
    }
}
