package fifthform.simulator.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.network.Blocks;
import fifthform.curves.network.Given;
import fifthform.curves.network.Guess;
import fifthform.curves.network.Memory;
import fifthform.curves.network.Moment;
import fifthform.curves.network.Network;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What training saw a network answer is what the program will make of its file: floats and doubles differ by 10⁻⁴ K at most. */
class AgreementTest {
    private static final int STEPS = 900;

    @Test
    void the_program_reads_the_file_and_answers_as_in_training() {
        Parameters weights = Parameters.random(new Shape(2, 32, 64), 3);
        Network network = Network.of(WeightWriter.lines(Map.of("data", "invented"), List.of(weights)), "written");
        assertEquals(List.of("data = invented"), network.provenance());
        List<Moment> moments = moments();
        float[][] answers = new NetworkPass(weights.shape).forward(weights, session(moments));
        Memory memory = network.nothing();
        double largest = 0;
        for (int t = 0; t < STEPS; t++) {
            Network.Step step = network.step(memory, moments.get(t));
            memory = step.memory();
            Guess guess = step.guess();
            float[] answer = answers[t];
            Arrays.sort(answer, 0, Loss.POINTS);
            Arrays.sort(answer, Loss.LATER, Loss.LATER + Loss.POINTS);
            assertEquals(guess.ifNow().fiveKelvin(), answer[0], 1e-4, "step " + t);
            assertEquals(guess.ifNow().halfKelvin(), answer[2], 1e-4, "step " + t);
            assertEquals(guess.ifLater().ninetyFiveKelvin(), answer[Loss.LATER + 4], 1e-4, "step " + t);
            assertEquals(guess.bulkKelvin(), answer[Loss.BULK], 1e-4, "step " + t);
            double odds = StrictMath.exp(answer[Loss.PLACE] - answer[Loss.PLACE + Session.COLD_WATER]);
            assertEquals(guess.bathFraction() / guess.coldWaterFraction(), odds, 1e-3, "step " + t);
            largest = Math.max(largest, Math.abs(guess.bulkKelvin()));
        }
        assertTrue(largest > 0.02, "a network that answers nothing would agree as well");
    }

    /** Half an hour of a temperature that wanders. */
    private static List<Moment> moments() {
        SplittableRandom random = new SplittableRandom(1);
        List<Moment> all = new ArrayList<>();
        Blocks blocks = Blocks.START;
        double celsius = 31;
        for (int second = 0; all.size() < STEPS; second++) {
            Blocks.Run run = blocks.until(second, Given.nothingBut(31));
            all.addAll(run.moments());
            celsius = Math.max(26, Math.min(46, celsius + random.nextDouble(-0.3, 0.3)));
            blocks = run.after().reading(second, celsius);
        }
        return all;
    }

    private static Session session(List<Moment> moments) {
        float[] inputs = new float[STEPS * Session.INPUTS];
        for (int t = 0; t < STEPS; t++) moments.get(t).copyInto(inputs, t * Session.INPUTS);
        float[] none = new float[STEPS];
        Arrays.fill(none, Float.NaN);
        int[] noDip = new int[STEPS];
        Arrays.fill(noDip, Session.NONE);
        return new Session(1, inputs, none, none, new byte[STEPS], none, new float[STEPS], noDip);
    }
}
