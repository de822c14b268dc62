package fifthform.curves.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.Place;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a forecast answers: when a limit is reached, until when a lift helps, and how its band grows. */
class ForecastTest {
    private static final Instant NOW = Instant.parse("2026-01-10T10:00:00Z");

    /** Over a bath so hot that the rise is a straight line: 1 K a minute from 30 °C, a coast of 40 s. */
    private static Forecast rising() {
        Course course = new Course(Place.BATH, 30, 1.0 / 60, 0, 40, 10_000);
        return new Forecast(
                NOW, Outlook.around(30.67, 0.2, 40), Outlook.around(33, 1, 180), Optional.empty(), course, 0.002, 0.05);
    }

    /**
     * A push that fades to zero at 40 °C with 600 s: the chocolate is 10 (1 − e^(−t/600)) above 30 and has 40/60 e^(−t/600)
     * to coast, so 32 °C at the turn is passed at t = −600 ln((10 − 2)/(10 − 40/60)) = 92.5 s.
     */
    @Test
    void aPushThatFadesLeavesLessToCoast() {
        Course course = new Course(Place.BATH, 30, 1.0 / 60, 0, 40, 40);
        Outlook turn = Outlook.around(30 + 40.0 / 60, 0.2, 40);
        Forecast f = new Forecast(NOW, turn, turn, Optional.empty(), course, 0.002, 0.05);
        assertEquals(92.5, f.latestLift(32).orElseThrow().likelySeconds(), 0.1);
    }

    private static Forecast cooling() {
        Course course = new Course(Place.TABLE, 32, -0.3 / 60, 0.3 / 60, 40, 20);
        return new Forecast(
                NOW, Outlook.around(32, 0.2, 0), Outlook.around(31.1, 1, 180), Optional.empty(), course, 0.0005, 0.05);
    }

    @Test
    void aLimitAheadIsReachedWhenTheLineSays() {
        Reach reach = rising().timeTo(31.5);
        assertEquals(90, reach.likelySeconds().orElseThrow(), 0.1);
        double early = reach.earliestSeconds().orElseThrow();
        double late = rising().timeTo(31).latestSeconds().orElseThrow();
        assertTrue(early > 30 && early < 80 && late > 100, reach + " " + late);
        assertEquals(OptionalDouble.empty(), reach.latestSeconds(), "the lower edge is not there in three minutes");
        assertEquals(
                31.5, rising().at(Duration.ofMillis(Math.round(1000 * early))).upperCelsius(), 0.01);
    }

    @Test
    void aLimitBelowIsReachedFromAbove() {
        Reach reach = cooling().timeTo(31.4);
        assertEquals(120, reach.likelySeconds().orElseThrow(), 0.1);
        assertTrue(reach.earliestSeconds().orElseThrow() < 120);
    }

    @Test
    void whatIsNotReachedWithinTheHorizonHasNoTime() {
        assertEquals(OptionalDouble.empty(), cooling().timeTo(34).likelySeconds());
        assertEquals(OptionalDouble.empty(), rising().timeTo(35).likelySeconds());
        assertEquals(OptionalDouble.of(0), rising().timeTo(30).likelySeconds());
    }

    /** The turning point lies 0.67 K above the chocolate, so it passes 32 °C when the chocolate passes 31.33: after 80 s. */
    @Test
    void aLiftHelpsUntilItsTurningPointPassesTheLimit() {
        LastChance last = rising().latestLift(32).orElseThrow();
        assertEquals(79.8, last.likelySeconds(), 0.5);
        assertEquals(79.8 - 60 * 1.645 * 0.2, last.cautiousSeconds(), 0.5);
        assertTrue(rising().latestLift(30.5).orElseThrow().likelySeconds() < 0, "too late already");
        assertEquals(Optional.empty(), cooling().latestLift(33), "nothing to lift from");
        assertEquals(Optional.empty(), rising().latestLift(40));
    }

    @Test
    void theBandGrowsWithTimeAndWithEachPartThatIsUnsure() {
        double before = 0;
        for (int s = 0; s <= 180; s += 20) {
            double width = rising().at(Duration.ofSeconds(s)).sigmaKelvin();
            assertTrue(width > before, s + " s: " + width);
            before = width;
        }
        Course still = new Course(Place.TABLE, 31, 0, 0, 40, 20);
        Course coasting = new Course(Place.TABLE, 31, 0.02, 0, 40, 20);
        double calm = CourseSpread.kelvin(still, 60, 0.001, 0.05);
        assertTrue(CourseSpread.kelvin(still, 60, 0.004, 0.05) > calm, "rate");
        assertTrue(CourseSpread.kelvin(still, 60, 0.001, 0.3) > calm, "level");
        assertTrue(CourseSpread.kelvin(coasting, 60, 0.001, 0.05) > 2 * calm, "heat on its way");
        assertEquals(0.05, CourseSpread.kelvin(still, 0, 0.001, 0.05), 1e-12, "now only the temperature is unsure");
    }
}
