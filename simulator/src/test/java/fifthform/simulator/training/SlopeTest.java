package fifthform.simulator.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Answers and slopes of the quick network, against a plain one in doubles and its differences. */
class SlopeTest {
    private static final Session SESSION = Invented.anything(23, 4);
    private static final Loss LOSS = new Loss(7, 11, 0.6, 0.8);

    @Test
    void the_quick_squashing_is_within_a_few_millionths() {
        float[] tanh = new float[40_001];
        for (int i = 0; i < tanh.length; i++) tanh[i] = (i - 20_000) * 0.001f;
        Squash.tanh(tanh);
        double worst = 0;
        for (int i = 0; i < tanh.length; i++) {
            worst = Math.max(worst, Math.abs(tanh[i] - StrictMath.tanh((i - 20_000) * 0.001f)));
        }
        assertTrue(worst < 5e-7, "tanh is wrong by " + worst);
        float[] logistic = {-30, -2, 0, 2, 30};
        Squash.logistic(logistic);
        double[] wanted = {0, 1 / (1 + Math.exp(2)), 0.5, 1 / (1 + Math.exp(-2)), 1};
        for (int i = 0; i < wanted.length; i++) assertEquals(wanted[i], logistic[i], 1e-6);
    }

    /** The whole walk of 600 steps, sizes as they are used. */
    @Test
    void single_precision_answers_as_doubles_do() {
        Session session = Invented.anything(600, 5);
        Parameters weights = Parameters.random(new Shape(2, 32, 64), 1);
        int first = 3 * 32 * (26 + 32 + 1) + 32;
        int second = 3 * 32 * (32 + 32 + 1) + 32;
        assertEquals(first + second + 64 * 33 + 14 * 65, weights.count());
        float[][] quick = new NetworkPass(weights.shape).forward(weights, session);
        double[][] plain = new PlainNetwork(weights).answers(session);
        for (int t = 0; t < session.steps; t++) {
            for (int i = 0; i < Parameters.OUTPUTS; i++) assertEquals(plain[t][i], quick[t][i], 1e-4, "step " + t);
        }
    }

    /** Every single weight of a small network, by differences of the plain one's loss. */
    @Test
    void every_slope_is_what_differences_say() {
        Parameters weights = Parameters.random(new Shape(2, 3, 5), 2);
        NetworkPass pass = new NetworkPass(weights.shape);
        pass.forward(weights, Invented.anything(40, 6));
        float[][] answers = pass.forward(weights, SESSION);
        LOSS.of(SESSION, answers, pass.answerSlope());
        Parameters slope = Parameters.zeros(weights.shape);
        pass.backward(weights, SESSION, slope);
        PlainNetwork plain = new PlainNetwork(weights);
        for (int p = 0; p < slope.parts().size(); p++)
            compare(plain, plain.parts().get(p), slope.parts().get(p), p);
    }

    private static void compare(PlainNetwork plain, double[][] part, float[][] slope, int number) {
        for (int r = 0; r < part.length; r++) {
            for (int c = 0; c < part[r].length; c++) {
                double step = 1e-5;
                double was = part[r][c];
                part[r][c] = was + step;
                double above = loss(plain);
                part[r][c] = was - step;
                double below = loss(plain);
                part[r][c] = was;
                double wanted = (above - below) / (2 * step);
                assertEquals(wanted, slope[r][c], 2e-5 + 1e-3 * Math.abs(wanted), "part " + number + " " + r + " " + c);
            }
        }
    }

    /** The loss as its Javadoc says it, written once more. */
    private static double loss(PlainNetwork plain) {
        double[][] answers = plain.answers(SESSION);
        double sum = 0;
        for (int t = 0; t < SESSION.steps; t++) {
            double[] a = answers[t];
            for (int later : List.of(0, 1)) {
                double truth = later == 0 ? SESSION.turn[t] : SESSION.turnLater[t];
                for (int q = 0; q < 5 && !Double.isNaN(truth); q++) {
                    double share = new double[] {0.05, 0.25, 0.5, 0.75, 0.95}[q];
                    double off = truth - a[5 * later + q];
                    sum += SESSION.weight[t] / 7 / 10 * Math.max(share * off, (share - 1) * off);
                }
            }
            if (SESSION.place[t] >= 0) {
                double all = Math.exp(a[10]) + Math.exp(a[11]) + Math.exp(a[12]);
                sum += 0.6 / 11 * (Math.log(all) - a[10 + SESSION.place[t]]);
            }
            double off = Math.abs(a[13] - SESSION.bulk[t]);
            if (!Double.isNaN(off)) sum += 0.8 / 11 * (off < 0.5 ? off * off / 2 : 0.5 * (off - 0.25));
        }
        return sum;
    }

    @Test
    void the_loss_is_what_it_says() {
        Parameters weights = Parameters.random(new Shape(2, 3, 5), 2);
        NetworkPass pass = new NetworkPass(weights.shape);
        double quick = LOSS.of(SESSION, pass.forward(weights, SESSION), pass.answerSlope());
        assertEquals(loss(new PlainNetwork(weights)), quick, 1e-5 * quick);
    }
}
