package fifthform.curves.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.estimate.Estimate;
import fifthform.curves.estimate.Freshness;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.signal.Trend;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Bands that learn from how those before them came out. */
class HindsightTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final Contact ON_TABLE = new Contact(Place.TABLE, START, Evidence.TOLD);

    private static Estimate at(int second, double celsius) {
        return new Estimate(
                START.plusSeconds(second), celsius, 0.05, 0, 0.05, Trend.startingAt(celsius, 0.05), Freshness.FRESH);
    }

    private static Forecast still(Place place, Estimate e) {
        Course course = new Course(place, e.chocolateCelsius(), 0, 0, 40, 20);
        Outlook here = Outlook.around(e.chocolateCelsius(), 0.1, 0);
        return new Forecast(e.at(), here, here, Optional.empty(), course, 0.001, 0.05);
    }

    private static Hindsight after(int seconds, double noiseKelvin) {
        SplittableRandom random = new SplittableRandom(3);
        Hindsight hindsight = Hindsight.NONE;
        for (int s = 0; s <= seconds; s++) {
            Estimate e = at(s, 31 + noiseKelvin * (2 * random.nextDouble() - 1));
            hindsight = hindsight.with(e, ON_TABLE, still(Place.TABLE, e));
        }
        return hindsight;
    }

    @Test
    void nothingIsLearnedBeforeAMinuteIsOver() {
        assertEquals(1, after(59, 5).factor(Place.TABLE, 60));
        assertTrue(after(90, 5).factor(Place.TABLE, 60) > 1.2);
        assertEquals(1, after(170, 5).factor(Place.TABLE, 180));
        assertTrue(after(240, 5).factor(Place.TABLE, 180) > 1.2);
    }

    @Test
    void aBandThatAlwaysHoldsShrinksAndOneThatNeverDoesGrowsWithinBounds() {
        assertEquals(0.25, after(3600, 0).factor(Place.TABLE, 60), 1e-9);
        assertEquals(3, after(3600, 9).factor(Place.TABLE, 60), 1e-9);
        assertEquals(1, after(3600, 9).factor(Place.BATH, 60), "the bath has shown nothing");
    }

    @Test
    void aBowlThatWasMovedShowsNothingOfWhatWasSaidBefore() {
        Hindsight before = after(55, 0);
        Contact moved = new Contact(Place.BATH, START.plusSeconds(56), Evidence.TOLD);
        Hindsight then = before;
        for (int s = 56; s < 110; s++) then = then.with(at(s, 99), moved, still(Place.BATH, at(s, 99)));
        assertEquals(1, then.factor(Place.TABLE, 60));
        assertEquals(1, then.factor(Place.BATH, 60));
    }

    @Test
    void theFactorWidensWhatTheForecastSays() {
        Estimate e = at(0, 31);
        Forecast first = still(Place.TABLE, e);
        Hindsight wide = after(3600, 9);
        double factor = first.after(wide).at(Duration.ofSeconds(60)).sigmaKelvin()
                / first.at(Duration.ofSeconds(60)).sigmaKelvin();
        assertEquals(3, factor, 1e-9);
        double once = first.after(wide).ifLeft().sigmaKelvin();
        assertEquals(once, first.after(after(100, 0)).after(wide).ifLeft().sigmaKelvin(), 1e-9, "not twice");
    }

    @Test
    void whatWaitsIsBounded() {
        assertTrue(after(3600, 0.1).waiting().size() <= 49);
    }
}
