package fifthform.curves.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.network.Guess;
import fifthform.curves.network.Points;
import fifthform.curves.phase.Batch;
import fifthform.curves.phase.Evidence;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How the band adapts to a kitchen, coast by coast. */
class CalibrationTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final Batch ON_BATH = Batch.atStart(START).confirmed(Phase.REWARM, START);
    private static final Batch ON_TABLE = ON_BATH.moved(Place.TABLE, START);
    private static final Coasting IDLE = Coasting.atStart(TestRecipes.setup());

    /** While on the bath the network says each 2 s that it turns at {@code base + 1} K, give or take half a kelvin. */
    private static Saying saying(double seconds, double baseCelsius, double factor) {
        Points points = new Points(0.5, 0.8, 1, 1.2, 1.5);
        Guess guess = new Guess(seconds, baseCelsius, seconds, baseCelsius, points, points, 0.8, 0.1, 0.1, 0);
        return new Saying(guess, START, factor);
    }

    private static Coasting awaiting(double seconds) {
        Lift lift = new Lift(
                START.plusMillis((long) (1000 * seconds)),
                30,
                1,
                0.1,
                Duration.ofMinutes(1),
                Evidence.INFERRED,
                30,
                Optional.empty(),
                30);
        return new Coasting(IDLE.coast(), Optional.of(lift), IDLE.lastTurn(), IDLE.lossShare(), IDLE.bowl());
    }

    private static Coasting turned(Coasting awaiting, double celsius) {
        Turn turn = new Turn(START.plusSeconds(200), celsius, awaiting.lift().orElseThrow());
        return new Coasting(IDLE.coast(), Optional.empty(), Optional.of(turn), IDLE.lossShare(), IDLE.bowl());
    }

    /** A dip of 40 s in which the base goes up by 0.1 K each 2 s from 28 °C; the lift was at 20 s and is seen at 40 s. */
    private static Calibration dipped(Calibration before, double turnCelsius) {
        Calibration c = before;
        for (int s = 2; s <= 40; s += 2) {
            Optional<Saying> said = Optional.of(saying(s, 28 + 0.05 * s, c.factor()));
            c = c.followed(IDLE, IDLE, ON_BATH, said);
            c = c.followed(IDLE, IDLE, ON_BATH, said);
        }
        Coasting awaiting = awaiting(20);
        c = c.followed(IDLE, awaiting, ON_TABLE, Optional.empty());
        Calibration.Band given = c.awaited().orElseThrow();
        assertEquals(30 - 0.5 * c.factor(), given.lowerCelsius(), 1e-9);
        assertEquals(30 + 0.5 * c.factor(), given.upperCelsius(), 1e-9);
        c = c.followed(awaiting, awaiting, ON_TABLE, Optional.empty());
        return c.followed(awaiting, turned(awaiting, turnCelsius), ON_TABLE, Optional.empty());
    }

    @Test
    void a_turn_outside_the_band_of_the_lift_widens_and_one_inside_narrows_a_little() {
        // Base at the lift 29 °C: the band was 29.5 to 30.5 °C. That of the end of the dip would be 30.5 to 31.5 °C.
        assertEquals(0.995, dipped(Calibration.USUAL, 30.4).factor(), 1e-12);
        assertEquals(1.045, dipped(Calibration.USUAL, 30.6).factor(), 1e-12);
        assertTrue(dipped(Calibration.USUAL, 30.4).awaited().isEmpty());
    }

    @Test
    void one_in_ten_outside_keeps_it_where_it_is() {
        Calibration c = new Calibration(1.2, Calibration.USUAL.said(), Optional.empty());
        double before = c.factor();
        for (int i = 0; i < 10; i++) c = dipped(c, i == 0 ? 40 : 30);
        assertEquals(before, c.factor(), 1e-9);
    }

    @Test
    void it_stays_within_its_bounds() {
        Calibration wide = new Calibration(2.49, Calibration.USUAL.said(), Optional.empty());
        assertEquals(2.5, dipped(wide, 40).factor());
        Calibration narrow = new Calibration(0.701, Calibration.USUAL.said(), Optional.empty());
        assertEquals(0.7, dipped(narrow, 30).factor());
    }

    @Test
    void a_coast_that_was_broken_off_teaches_nothing() {
        Calibration c = Calibration.USUAL.followed(IDLE, IDLE, ON_BATH, Optional.of(saying(2, 28, 1)));
        Coasting awaiting = awaiting(3);
        c = c.followed(IDLE, awaiting, ON_TABLE, Optional.empty());
        assertTrue(c.awaited().isPresent());
        c = c.followed(awaiting, IDLE, ON_BATH, Optional.of(saying(4, 28, 1)));
        assertTrue(c.awaited().isEmpty());
        assertEquals(1, c.factor());
    }
}
