package fifthform.simulator.training;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One walk of a session through a network and back. Each worker has one and uses it again and again. */
final class NetworkPass {
    private final Shape shape;
    private final List<GruPass> recurrent = new ArrayList<>();
    private float[][] inputs = {};
    private float[][] middle = {};
    private float[][] answers = {};
    private float[][] answerSlope = {};
    private float[][] middleSlope = {};
    private float[][] memorySlope = {};

    NetworkPass(Shape shape) {
        this.shape = shape;
        for (int i = 0; i < shape.layers(); i++) recurrent.add(new GruPass(shape.units()));
    }

    private void makeRoom(int steps) {
        if (inputs.length >= steps) return;
        inputs = new float[steps][Session.INPUTS];
        middle = new float[steps][shape.middle()];
        answers = new float[steps][Parameters.OUTPUTS];
        answerSlope = new float[steps][Parameters.OUTPUTS];
        middleSlope = new float[steps][shape.middle()];
        memorySlope = new float[steps][shape.units()];
    }

    /** Answers with a row of {@link Parameters#OUTPUTS} numbers for each step; they hold until the next walk. */
    float[][] forward(Parameters w, Session session) {
        int steps = session.steps;
        makeRoom(steps);
        for (int t = 0; t < steps; t++) {
            System.arraycopy(session.inputs, t * Session.INPUTS, inputs[t], 0, Session.INPUTS);
        }
        for (int i = 0; i < recurrent.size(); i++) {
            recurrent.get(i).forward(w.recurrent.get(i), below(i), steps);
        }
        float[][] remembered = below(recurrent.size());
        for (int t = 0; t < steps; t++) {
            dense(w.dense, remembered[t], middle[t]);
            Squash.tanh(middle[t]);
            dense(w.out, middle[t], answers[t]);
        }
        return answers;
    }

    private static void dense(DenseWeights w, float[] x, float[] y) {
        System.arraycopy(w.bias[0], 0, y, 0, y.length);
        Rows.addProduct(y, x, w.input);
    }

    /** Room for the loss's slope along the answers: one row a step, filled by the caller before {@link #backward}. */
    float[][] answerSlope() {
        return answerSlope;
    }

    /** @param into what the weights contribute is added here */
    void backward(Parameters w, Session session, Parameters into) {
        int steps = session.steps;
        densely(w, into, steps);
        for (int i = recurrent.size() - 1; i >= 0; i--) {
            GruPass pass = recurrent.get(i);
            pass.backward(w.recurrent.get(i), memorySlope, below(i), steps, into.recurrent.get(i));
            if (i > 0) pass.inputSlope(w.recurrent.get(i), memorySlope, steps);
        }
    }

    private float[][] below(int layer) {
        return layer == 0 ? inputs : recurrent.get(layer - 1).after();
    }

    private void densely(Parameters w, Parameters into, int steps) {
        float[][] outBack = Rows.transposed(w.out.input);
        float[][] denseBack = Rows.transposed(w.dense.input);
        for (int t = 0; t < steps; t++) {
            Arrays.fill(middleSlope[t], 0);
            Rows.addProduct(middleSlope[t], answerSlope[t], outBack);
            throughTanh(middleSlope[t], middle[t]);
            Arrays.fill(memorySlope[t], 0);
            Rows.addProduct(memorySlope[t], middleSlope[t], denseBack);
        }
        Rows.addOuter(into.out.input, middle, answerSlope, steps);
        Rows.addAll(into.out.bias[0], answerSlope, steps);
        Rows.addOuter(into.dense.input, below(recurrent.size()), middleSlope, steps);
        Rows.addAll(into.dense.bias[0], middleSlope, steps);
    }

    private static void throughTanh(float[] slope, float[] y) {
        for (int j = 0; j < slope.length; j++) slope[j] *= 1 - y[j] * y[j];
    }
}
