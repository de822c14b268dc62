package fifthform.curves.network;

/**
 * A layer of gated recurrent units: with input x and memory h
 *
 * <pre>
 * z = σ(Wz x + bz + Uz h)          how much of the memory stays
 * r = σ(Wr x + br + Ur h)
 * n = tanh(Wn x + bn + r ⊙ (Un h + cn))
 * h' = (1 − z) ⊙ n + z ⊙ h
 * </pre>
 *
 * Source: K. Cho et al. 2014, arXiv:1406.1078, with the reset gate behind the product as in PyTorch's documentation of
 * {@code GRU}; from memory.
 */
record Gru(Affine wz, Affine uz, Affine wr, Affine ur, Affine wn, Affine un) {
    int units() {
        return wz.rows();
    }

    int inputs() {
        return wz.columns();
    }

    /** The memory after this step; the one before begins at {@code from} in {@code memory}. */
    double[] step(double[] inputs, double[] memory, int from) {
        double[] after = wz.of(inputs, 0);
        double[] keep = uz.of(memory, from);
        double[] reset = wr.of(inputs, 0);
        double[] resetMemory = ur.of(memory, from);
        double[] fresh = wn.of(inputs, 0);
        double[] freshMemory = un.of(memory, from);
        for (int i = 0; i < after.length; i++) {
            double z = sigmoid(after[i] + keep[i]);
            double r = sigmoid(reset[i] + resetMemory[i]);
            double n = StrictMath.tanh(fresh[i] + r * freshMemory[i]);
            after[i] = (1 - z) * n + z * memory[from + i];
        }
        return after;
    }

    static double sigmoid(double x) {
        return 1 / (1 + StrictMath.exp(-x));
    }
}
