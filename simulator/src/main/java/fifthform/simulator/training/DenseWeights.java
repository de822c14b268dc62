package fifthform.simulator.training;

import java.util.List;

/** Parameters of a layer {@code x·W + b} (or what each contributes to a slope). */
final class DenseWeights {
    final float[][] input;
    final float[][] bias;

    DenseWeights(int inputs, int units) {
        input = new float[inputs][units];
        bias = new float[1][units];
    }

    int inputs() {
        return input.length;
    }

    int units() {
        return bias[0].length;
    }

    List<float[][]> parts() {
        return List.of(input, bias);
    }
}
