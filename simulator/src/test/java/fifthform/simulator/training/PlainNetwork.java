package fifthform.simulator.training;

import java.util.ArrayList;
import java.util.List;

/** The network once more, in doubles and without any haste: what the quick one is held against. */
final class PlainNetwork {
    private final List<double[][][]> recurrent = new ArrayList<>();
    private final double[][][] dense;
    private final double[][][] out;

    PlainNetwork(Parameters weights) {
        for (GruWeights layer : weights.recurrent) recurrent.add(doubles(layer.parts()));
        dense = doubles(weights.dense.parts());
        out = doubles(weights.out.parts());
    }

    private static double[][][] doubles(List<float[][]> parts) {
        double[][][] all = new double[parts.size()][][];
        for (int p = 0; p < all.length; p++) {
            float[][] part = parts.get(p);
            all[p] = new double[part.length][part[0].length];
            for (int r = 0; r < part.length; r++) {
                for (int c = 0; c < part[r].length; c++) all[p][r][c] = part[r][c];
            }
        }
        return all;
    }

    /** The matrices in the order of {@link Parameters#parts}; a test may change their numbers. */
    List<double[][]> parts() {
        List<double[][]> parts = new ArrayList<>();
        for (double[][][] layer : recurrent) parts.addAll(List.of(layer));
        parts.addAll(List.of(dense));
        parts.addAll(List.of(out));
        return parts;
    }

    double[][] answers(Session session) {
        double[][] answers = new double[session.steps][];
        double[][] memory = new double[recurrent.size()][];
        for (int i = 0; i < memory.length; i++) memory[i] = new double[recurrent.get(i)[1].length];
        for (int t = 0; t < session.steps; t++) {
            double[] x = new double[Session.INPUTS];
            for (int i = 0; i < x.length; i++) x[i] = session.inputs[t * Session.INPUTS + i];
            for (int i = 0; i < memory.length; i++) {
                memory[i] = remembered(recurrent.get(i), x, memory[i]);
                x = memory[i];
            }
            double[] middle = product(x, dense[0], dense[1][0]);
            for (int j = 0; j < middle.length; j++) middle[j] = Math.tanh(middle[j]);
            answers[t] = product(middle, out[0], out[1][0]);
        }
        return answers;
    }

    private static double[] remembered(double[][][] w, double[] x, double[] h) {
        int units = h.length;
        double[] fromInput = product(x, w[0], w[2][0]);
        double[] fromMemory = product(h, w[1], new double[3 * units]);
        double[] after = new double[units];
        for (int j = 0; j < units; j++) {
            double z = 1 / (1 + Math.exp(-fromInput[j] - fromMemory[j]));
            double r = 1 / (1 + Math.exp(-fromInput[units + j] - fromMemory[units + j]));
            double n = Math.tanh(fromInput[2 * units + j] + r * (fromMemory[2 * units + j] + w[3][0][j]));
            after[j] = (1 - z) * n + z * h[j];
        }
        return after;
    }

    private static double[] product(double[] x, double[][] w, double[] b) {
        double[] y = b.clone();
        for (int j = 0; j < y.length; j++) {
            for (int k = 0; k < x.length; k++) y[j] += x[k] * w[k][j];
        }
        return y;
    }
}
