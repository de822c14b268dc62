package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.forecast.Forecast;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What "the furthest if nothing changes" means in each place. */
class IfLeftTest {
    private static final double HORIZON_SECONDS = Forecast.HORIZON.toSeconds();

    /** After a minute of readings once a second. */
    private static Forecast after(Place place, DoubleUnaryOperator celsiusAt) {
        Setup setup = TestRecipes.setup();
        Instant start = StoryMaker.START;
        State state = Engine.step(setup, Engine.start(setup, start), new PhaseConfirmed(start, Phase.REWARM))
                .after();
        state = Engine.step(setup, state, new BowlMoved(start, place)).after();
        for (int second = 0; second <= 60; second++) {
            Instant at = start.plusSeconds(second);
            state = Engine.step(setup, state, StoryKitchen.reading(at, celsiusAt.applyAsDouble(second)))
                    .after();
        }
        assertEquals(place, state.batch().place());
        return state.forecast().orElseThrow();
    }

    @Test
    void overWaterItIsTheEndOfTheThreeMinutes() {
        Forecast warm = after(Place.BATH, s -> 28 + s / 60);
        assertEquals(HORIZON_SECONDS, warm.ifLeft().seconds());
        assertEquals(warm.at(Forecast.HORIZON).celsius(), warm.ifLeft().celsius(), 1e-9);
        assertTrue(warm.ifLeft().celsius() > 30);
    }

    @Test
    void onTheTableAFallingBowlFallsForThreeMinutes() {
        Forecast falling = after(Place.TABLE, s -> 31 - 0.3 * s / 60);
        assertEquals(HORIZON_SECONDS, falling.ifLeft().seconds());
        assertEquals(falling.at(Forecast.HORIZON).celsius(), falling.ifLeft().celsius(), 1e-9);
        assertTrue(falling.ifLeft().celsius() < 30.6);
    }

    @Test
    void onTheTableARisingBowlTurnsFirst() {
        Forecast rising = after(Place.TABLE, s -> 29 + 0.6 * s / 60);
        double turns = rising.ifLeft().seconds();
        assertTrue(turns > 5 && turns < HORIZON_SECONDS, "turns after " + turns);
        for (int ahead = 0; ahead <= HORIZON_SECONDS; ahead += 5) {
            double then = rising.at(Duration.ofSeconds(ahead)).celsius();
            assertTrue(then <= rising.ifLeft().celsius() + 1e-9, "higher after " + ahead);
        }
    }
}
