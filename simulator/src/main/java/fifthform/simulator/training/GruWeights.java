package fifthform.simulator.training;

import java.util.List;

/**
 * Parameters of a layer of gated recurrent units (or what each contributes to a slope). Columns are the units three times:
 * how much of the memory stays (z), how much of it is seen (r), what is new (n).
 *
 * <pre>
 * z = σ(x·Wz + bz + h·Uz)
 * r = σ(x·Wr + br + h·Ur)
 * n = tanh(x·Wn + bn + r ⊙ (h·Un + cn))
 * h' = (1 − z) ⊙ n + z ⊙ h
 * </pre>
 *
 * Source: K. Cho et al. 2014, arXiv:1406.1078, with the reset gate behind the product; from memory.
 */
final class GruWeights {
    final float[][] input;
    final float[][] memory;
    final float[][] bias;
    final float[][] memoryBias;

    GruWeights(int inputs, int units) {
        input = new float[inputs][3 * units];
        memory = new float[units][3 * units];
        bias = new float[1][3 * units];
        memoryBias = new float[1][units];
    }

    int inputs() {
        return input.length;
    }

    int units() {
        return memory.length;
    }

    List<float[][]> parts() {
        return List.of(input, memory, bias, memoryBias);
    }
}
