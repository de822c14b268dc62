package fifthform.simulator.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A task whose answer is known is learned, and the same weights come whoever does the work. */
class LearningTest {
    private static Plan plan(int passes) {
        return new Plan(new Shape(2, 12, 16), passes, 8, 0.01, 0, 0.05, 0.05);
    }

    private static Parameters trained(int sessions, int passes, int threads) throws InterruptedException {
        Plan plan = plan(passes);
        try (Workers workers = new Workers(threads, plan.shape())) {
            Training training = new Training(Lessons.of(Invented.coasts(sessions, 100)), plan, 7, workers);
            for (int i = 0; i < passes; i++) training.pass();
            return training.weights();
        }
    }

    /**
     * The best possible pinball loss of five points of a normal distribution is {@code σ Σ φ(z)/5}: 0.103, 0.318, 0.399,
     * 0.318 and 0.103 from a table of the normal density.
     */
    @Test
    void what_can_be_known_is_learned_and_what_cannot_is_said() throws InterruptedException {
        Parameters weights = trained(500, 25, 2);
        try (Workers workers = new Workers(2, weights.shape)) {
            Score score = Examination.of(List.of(weights), Invented.coasts(200, 90_000), workers);
            double best = Invented.NOISE_KELVIN * (0.103 + 0.318 + 0.399 + 0.318 + 0.103) / 5;
            assertEquals(best, score.meanPinball(), 0.1 * best);
            assertEquals(0.9, score.meanCovered(), 0.04);
            // Mean of a normal error's size: σ √(2/π).
            double error = Invented.NOISE_KELVIN * Math.sqrt(2 / Math.PI);
            assertEquals(error, score.lift().errorKelvin() / score.lift().dips(), 0.15 * error);
            assertEquals(800, score.lift().dips(), 0.01);
        }
    }

    @Test
    void threads_do_not_show_in_a_single_bit() throws InterruptedException {
        Parameters one = trained(60, 2, 1);
        Parameters three = trained(60, 2, 3);
        for (int p = 0; p < one.parts().size(); p++) {
            assertTrue(Arrays.deepEquals(one.parts().get(p), three.parts().get(p)), "part " + p);
        }
    }

    @Test
    void the_pace_rises_and_falls() {
        Pace pace = new Pace(0.01, 10, 110);
        assertEquals(0.001, pace.at(0), 1e-12);
        assertEquals(0.01, pace.at(9), 1e-12);
        assertEquals(0.0051, pace.at(60), 1e-12);
        assertEquals(0.0002, pace.at(110), 1e-12);
    }
}
