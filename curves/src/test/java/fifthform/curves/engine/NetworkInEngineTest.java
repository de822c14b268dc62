package fifthform.curves.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.StoryMaker.Keys;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.input.Tick;
import fifthform.curves.network.Guess;
import fifthform.curves.network.Network;
import fifthform.curves.network.SameAnswer;
import fifthform.curves.recipe.Phase;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of the network's answers, with networks that always answer the same. */
class NetworkInEngineTest {
    /**
     * Turns 1.0 K up (0.6 to 1.8), 4 s later 1.4 K, each a little wider; fairly sure of the bath, and not so sure that it
     * moves a bowl of which a key has spoken.
     */
    private static final Network ON_BATH = answering(3, 0, -8);

    /** Fairly sure of the cold water, and not so sure that it moves a bowl of which a key has spoken. */
    private static final Network IN_COLD_WATER = answering(-8, 0, 2.5);

    private final StoryMaker maker = StoryMaker.rewarming(200, 0.2, Keys.PRESSED);
    private State state;

    private static Network answering(double bath, double table, double cold) {
        return SameAnswer.network(List.of(0.6, 0.8, 1.0, 1.3, 1.8, 1.0, 1.2, 1.4, 1.7, 2.2, bath, table, cold, 0.1));
    }

    /** The story so far, heard by a network from its beginning. */
    private void hears(Network network) {
        state = Engine.start(maker.setup, StoryMaker.START);
        for (Input input : maker.inputs) feeds(network, input);
    }

    private void feeds(Network network, Input input) {
        state = Engine.step(Optional.of(network), maker.setup, state, input).after();
    }

    /** What physics alone makes of the same story. */
    private Optional<Forecast> physics() {
        State without = Engine.start(maker.setup, StoryMaker.START);
        for (Input input : maker.inputs) {
            without = Engine.step(Optional.empty(), maker.setup, without, input).after();
        }
        return without.forecast();
    }

    private Forecast forecast() {
        return state.forecast().orElseThrow();
    }

    private Guess guess() {
        return state.insight().guess().orElseThrow();
    }

    @Test
    void on_the_bath_its_turning_point_is_the_forecast() {
        maker.watchesUntil(29);
        hears(ON_BATH);
        double share = Duration.between(StoryMaker.START, state.at()).toMillis() % 2000 / 4000.0;
        Outlook turn = forecast().ifLifted();
        assertEquals(guess().baseCelsius() + 1.0 + 0.4 * share, turn.celsius(), 1e-9);
        assertEquals(0.4, turn.celsius() - turn.lowerCelsius(), 0.04);
        assertEquals(0.8, turn.upperCelsius() - turn.celsius(), 0.04);
    }

    @Test
    void the_second_to_lift_lies_on_the_line_through_its_two_turning_points() {
        maker.watchesUntil(30.6);
        hears(ON_BATH);
        // 0.1 K/s, and widths that stay the same: the aim is where the turning point is then, low in 31 to 32 °C.
        double seconds = forecast().secondsToLift(state.at()).orElseThrow();
        double aim = forecast().ifLifted().celsius() + 0.1 * seconds;
        assertTrue(seconds < 4 && aim > 31.15 && aim < 31.5, aim + " °C in " + seconds + " s");
        maker.watches(Duration.ofSeconds(4));
        hears(ON_BATH);
        double later = forecast().secondsToLift(state.at()).orElseThrow();
        assertTrue(later < seconds);
        assertEquals(aim, forecast().ifLifted().celsius() + 0.1 * later, 0.005);
    }

    @Test
    void far_from_the_aim_the_course_says_when() {
        maker.watchesUntil(28.5);
        hears(ON_BATH);
        // The line would be there in this time; the bath warms the bowl more slowly.
        double line = (31.3 - forecast().ifLifted().celsius()) / 0.1;
        double seconds = forecast().secondsToLift(state.at()).orElseThrow();
        assertTrue(seconds > 1.5 * line, seconds + " s, by the line " + line);
    }

    /** The rules believe the key still; the curve has shown the network already that the bowl was lifted. */
    @Test
    void nobody_is_told_to_lift_what_stands_on_the_table() {
        maker.watchesUntil(30.6);
        hears(answering(0, 1, -8));
        assertTrue(forecast().liftAt().isPresent());
        hears(answering(0, 2, -8));
        assertEquals(Place.BATH, state.batch().place());
        assertEquals(Optional.empty(), forecast().liftAt());
        assertEquals(guess().baseCelsius() + 1.0, forecast().ifLifted().celsius(), 0.21);
    }

    /** Who is all but certain moves even what a key has put there, once the key is half a minute old. */
    @Test
    void an_old_key_gives_way_to_certainty_alone() {
        maker.watchesUntil(30.6);
        hears(answering(0, 3, -8));
        assertEquals(Place.BATH, state.batch().place());
        hears(answering(0, 4, -8));
        assertEquals(Place.TABLE, state.batch().place());
    }

    @Test
    void where_it_means_another_water_the_physics_speaks() {
        maker.watchesUntil(29);
        hears(IN_COLD_WATER);
        assertEquals(physics(), state.forecast());
    }

    @Test
    void where_it_is_in_two_minds_the_band_holds_both() {
        maker.watchesUntil(29);
        hears(answering(0, -9, 0));
        Outlook between = forecast().ifLifted();
        double physics = physics().orElseThrow().ifLifted().celsius();
        double heard = guess().baseCelsius() + 1.0;
        assertTrue(between.celsius() > Math.min(physics, heard) && between.celsius() < Math.max(physics, heard));
        assertTrue(between.lowerCelsius() < Math.min(physics, heard));
        assertTrue(between.upperCelsius() > Math.max(physics, heard));
    }

    @Test
    void on_the_table_it_speaks_until_the_bowl_has_turned() {
        maker.watchesUntil(29);
        maker.moves(Place.TABLE);
        maker.watches(Duration.ofSeconds(11));
        hears(ON_BATH);
        assertTrue(state.coasting().lift().isPresent());
        // Asked again it turns where it turns: nothing is added for the seconds since the step.
        assertEquals(guess().baseCelsius() + 1.0, forecast().ifLifted().celsius(), 1e-9);
        assertTrue(forecast().liftAt().isEmpty());
        maker.watches(Duration.ofMinutes(5));
        hears(ON_BATH);
        assertTrue(state.coasting().lift().isEmpty());
        assertEquals(physics(), state.forecast());
    }

    @Test
    void the_band_given_at_the_lift_meets_the_turn() {
        maker.watchesUntil(29);
        double at = maker.kitchen.chocolateCelsius();
        maker.moves(Place.TABLE);
        maker.watches(Duration.ofMinutes(5));
        double coast = maker.state.coasting().lastTurn().orElseThrow().celsius() - at;
        assertTrue(coast > 1 && coast < 2.2, "above a band to 0.5 K and in one to 3 K: " + coast);
        hears(SameAnswer.network(List.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.1, 0.2, 0.3, 0.4, 0.5, 3.0, 0.0, -8.0, 0.1)));
        double tooLow = state.calibration().factor();
        hears(SameAnswer.network(List.of(0.1, 1.0, 1.5, 2.0, 3.0, 0.1, 1.0, 1.5, 2.0, 3.0, 3.0, 0.0, -8.0, 0.1)));
        // The coast after the cold water was met by both alike.
        assertEquals(0.05, tooLow - state.calibration().factor(), 1e-9);
    }

    @Test
    void steps_are_made_by_time_and_not_by_readings() {
        maker.watchesUntil(29);
        hears(ON_BATH);
        double spoke = guess().atSeconds();
        Instant silent = state.at();
        for (int i = 1; i <= 9; i++) feeds(ON_BATH, new Tick(silent.plusSeconds(i)));
        assertTrue(guess().atSeconds() >= spoke + 8);
        assertTrue(guess().readSeconds() <= spoke + 2);
    }

    @Test
    void a_move_is_heard_with_its_time_and_taken_back_to_the_one_before() {
        maker.watchesUntil(29);
        hears(ON_BATH);
        Optional<BowlMoved> before = state.told().moved();
        assertEquals(Place.BATH, before.orElseThrow().to());
        String heard = state.insight().blocks().toString();
        feeds(ON_BATH, new BowlMoved(state.at(), Place.COLD_WATER));
        assertTrue(state.insight().blocks().toString().contains("COLD_WATER"));
        feeds(ON_BATH, new Undone(state.at(), state.inputs()));
        assertEquals(before, state.told().moved());
        assertEquals(heard, state.insight().blocks().toString());
    }

    @Test
    void readings_of_a_probe_that_is_out_are_not_heard() {
        maker.watchesUntil(29);
        hears(ON_BATH);
        feeds(ON_BATH, new ProbeTakenOut(state.at()));
        double read = guess().readCelsius();
        Instant out = state.at();
        for (int i = 1; i <= 20; i++) feeds(ON_BATH, StoryKitchen.reading(out.plusSeconds(i), 22));
        assertEquals(read, guess().readCelsius(), 0.2);
        assertTrue(state.forecast().isEmpty());
    }

    @Test
    void without_a_network_nothing_is_kept_for_one() {
        maker.watchesUntil(29);
        State without = Engine.start(maker.setup, StoryMaker.START);
        for (Input input : maker.inputs) {
            without = Engine.step(Optional.empty(), maker.setup, without, input).after();
        }
        assertTrue(without.insight().guess().isEmpty());
        assertEquals(Phase.REWARM, without.batch().phase());
        assertEquals(1, without.calibration().factor());
    }
}
