package fifthform.simulator.training;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** All weights of one network, or a slope along each of them. */
final class Parameters {
    /** Five points if lifted now, five if lifted later, three logits of the place, bulk less base. */
    static final int OUTPUTS = 14;

    /** Units begin with memories of 1 step to about this many: 2 s to 2 min. */
    private static final double LONGEST_MEMORY_STEPS = 60;

    final Shape shape;
    final List<GruWeights> recurrent;
    final DenseWeights dense;
    final DenseWeights out;
    private final List<float[][]> parts = new ArrayList<>();

    private Parameters(Shape shape) {
        this.shape = shape;
        List<GruWeights> layers = new ArrayList<>();
        for (int i = 0; i < shape.layers(); i++) {
            layers.add(new GruWeights(i == 0 ? Session.INPUTS : shape.units(), shape.units()));
        }
        recurrent = List.copyOf(layers);
        dense = new DenseWeights(shape.units(), shape.middle());
        out = new DenseWeights(shape.middle(), OUTPUTS);
        recurrent.forEach(layer -> parts.addAll(layer.parts()));
        parts.addAll(dense.parts());
        parts.addAll(out.parts());
    }

    static Parameters zeros(Shape shape) {
        return new Parameters(shape);
    }

    /**
     * Parameters to begin with: uniform within ± 1/√(inputs); biases zero, but for z, whose are drawn so that units forget
     * at different pace. Source: C. Tallec, Y. Ollivier 2018, arXiv:1804.11188 ("chrono initialization"), from memory.
     */
    static Parameters random(Shape shape, long seed) {
        Parameters weights = new Parameters(shape);
        SplittableRandom random = new SplittableRandom(seed);
        for (GruWeights layer : weights.recurrent) {
            draw(layer.input, random);
            draw(layer.memory, random);
            for (int j = 0; j < layer.units(); j++) {
                layer.bias[0][j] = (float) StrictMath.log(random.nextDouble(1, LONGEST_MEMORY_STEPS));
            }
        }
        draw(weights.dense.input, random);
        draw(weights.out.input, random);
        return weights;
    }

    private static void draw(float[][] rows, SplittableRandom random) {
        double most = 1 / Math.sqrt(rows.length);
        for (float[] row : rows) {
            for (int j = 0; j < row.length; j++) row[j] = (float) random.nextDouble(-most, most);
        }
    }

    /** The matrices one after the other, always in the same order; not copies. */
    List<float[][]> parts() {
        return parts;
    }

    /** How many numbers. */
    int count() {
        return parts.stream().mapToInt(p -> p.length * p[0].length).sum();
    }

    Parameters copy() {
        Parameters copy = new Parameters(shape);
        copy.add(this);
        return copy;
    }

    void clear() {
        for (float[][] part : parts) {
            for (float[] row : part) Arrays.fill(row, 0);
        }
    }

    void add(Parameters other) {
        for (int p = 0; p < parts.size(); p++) {
            float[][] part = parts.get(p);
            for (int r = 0; r < part.length; r++)
                Rows.add(part[r], 1, other.parts.get(p)[r]);
        }
    }

    void scale(float factor) {
        for (float[][] part : parts) {
            for (float[] row : part) {
                for (int j = 0; j < row.length; j++) row[j] *= factor;
            }
        }
    }

    /** Root of the sum of all squares. */
    double norm() {
        double sum = 0;
        for (float[][] part : parts) {
            for (float[] row : part) {
                for (float value : row) sum += (double) value * value;
            }
        }
        return Math.sqrt(sum);
    }
}
