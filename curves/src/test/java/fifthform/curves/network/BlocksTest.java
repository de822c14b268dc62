package fifthform.curves.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.network.Blocks.Run;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The network's inputs, worked out by hand from the readings. */
class BlocksTest {
    private static final Given ONLY_LOW = Given.nothingBut(31);

    private Blocks blocks = Blocks.START;
    private final List<Moment> moments = new ArrayList<>();

    private void until(double seconds, Given given) {
        Run run = blocks.until(seconds, given);
        blocks = run.after();
        moments.addAll(run.moments());
    }

    private void read(double seconds, double celsius) {
        until(seconds, ONLY_LOW);
        blocks = blocks.reading(seconds, celsius);
    }

    private Moment last() {
        return moments.get(moments.size() - 1);
    }

    @Test
    void a_step_is_finished_at_its_end_and_holds_the_mean_of_its_readings() {
        read(0.5, 30);
        read(1.5, 31);
        until(1.99, ONLY_LOW);
        assertEquals(0, moments.size());
        until(2, ONLY_LOW);
        assertEquals(2, last().endSeconds());
        // The 2 s before the session count as its first reading: (30.5 + 30) / 2.
        assertEquals(30.25, last().baseCelsius(), 1e-12);
        assertEquals(0, last().input(0), 1e-12);
        assertEquals(1, last().input(1));
        assertEquals(0.05, last().input(2), 1e-12);
        assertEquals(1, last().input(25));
    }

    @Test
    void no_step_is_made_before_the_first_reading() {
        until(100, ONLY_LOW);
        read(101, 45);
        until(102, ONLY_LOW);
        assertEquals(1, moments.size());
        assertEquals(102, last().endSeconds());
        assertEquals(45, last().baseCelsius());
    }

    @Test
    void a_straight_rise_shows_in_the_three_differences() {
        // 0.03 K/s for two minutes: means 4, 10 and 30 s apart differ by 0.12, 0.3 and 0.9 K.
        for (int s = 0; s <= 120; s++) read(s, 28 + 0.03 * s);
        assertEquals(0.12, last().input(3), 1e-9);
        assertEquals(0.3, last().input(4), 1e-9);
        assertEquals(0.45, last().input(5), 1e-9);
        // Readings of the last 10 s: 110 … 119 s, middle 114.5 s.
        assertEquals((28 + 0.03 * 114.5 - 31) / 2, last().input(6), 1e-9);
        assertEquals(28 + 0.03 * 117.5, last().baseCelsius(), 1e-9);
        assertEquals((28 + 0.03 * 119 - 31) / 5, last().input(0), 1e-9);
    }

    @Test
    void a_gap_holds_the_last_reading_and_says_how_old_it_is() {
        read(0.5, 30);
        read(5, 32);
        until(30, ONLY_LOW);
        assertEquals(15, moments.size());
        assertEquals(0, last().input(1));
        assertEquals(2, last().input(2));
        assertEquals(0.5, moments.get(4).input(2), 1e-12);
        assertEquals(32, last().baseCelsius());
        assertEquals(0.2, last().input(0), 1e-12);
    }

    @Test
    void readings_a_minute_apart_still_tell_the_rise() {
        for (int s = 1; s < 1200; s += 60) read(s, 28 + 0.01 * s);
        // Within the half minute after a reading the newer mean is one reading's step, 0.6 K, above the older.
        until(1141 + 29, ONLY_LOW);
        assertEquals(0.3, last().input(5), 1e-9);
    }

    @Test
    void a_long_silence_forgets_and_costs_little() {
        read(0.5, 45);
        read(1, 45);
        read(4000, 30);
        // The step that was open, and the last two minutes.
        assertEquals(61, moments.size());
        assertEquals(4000, last().endSeconds());
        assertEquals(3882, moments.get(1).endSeconds());
        until(4002, ONLY_LOW);
        assertEquals(30, last().baseCelsius());
        assertEquals(0, last().input(4));
    }

    @Test
    void what_comes_late_counts_as_of_the_open_step() {
        read(0.5, 30);
        read(9, 30);
        read(3, 32);
        until(10, ONLY_LOW);
        assertEquals(5, moments.size());
        assertEquals(0.2, last().input(2), 1e-12);
        assertEquals(30.5, last().baseCelsius(), 1e-12);
    }

    @Test
    void a_word_ages_and_can_be_taken_back() {
        read(0.5, 30);
        blocks = blocks.told(Place.TABLE, 1);
        until(31, ONLY_LOW);
        assertEquals(List.of(0.0, 1.0, 0.0), List.of(last().input(7), last().input(8), last().input(9)));
        assertEquals(29 / 60.0, last().input(10), 1e-12);
        blocks = blocks.told(Place.COLD_WATER, 31);
        until(300, ONLY_LOW);
        assertEquals(1, last().input(9));
        assertEquals(2, last().input(10));
        blocks = blocks.untold();
        until(302, ONLY_LOW);
        for (int i = 7; i <= 10; i++) assertEquals(0, last().input(i));
    }

    @Test
    void what_is_given_is_told_each_in_its_place() {
        Given given = new Given(
                31,
                OptionalDouble.of(41),
                OptionalDouble.of(1600),
                BowlMaterial.GLASS,
                Optional.of(new LearnedCoast(90, 0.2, 3)),
                OptionalDouble.of(17),
                OptionalDouble.of(2));
        read(0.5, 30);
        until(2, given);
        double[] wanted = {1, 0.5, 1, Math.log(2), 0, 1, 0, 1, Math.log(2), 0.2, 1, -0.5, 1, -Math.log(2), 1};
        for (int i = 0; i < wanted.length; i++) assertEquals(wanted[i], last().input(11 + i), 1e-12);
    }

    @Test
    void far_away_the_inputs_stay_in_bounds() {
        read(0.5, -20);
        read(2.5, 150);
        until(4, ONLY_LOW);
        for (int i = 0; i < Blocks.INPUTS; i++) assertTrue(Math.abs(last().input(i)) <= 6, "input " + i);
    }
}
