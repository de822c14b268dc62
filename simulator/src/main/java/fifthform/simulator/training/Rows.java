package fifthform.simulator.training;

/**
 * The few sums over rows of numbers on which all time is spent. A matrix is an array of rows, and every inner loop runs
 * along whole rows from index 0: only so does the compiler of JDK 17 make vector instructions of it (42 against 10
 * GFLOP/s at 96 columns on the machine it was written on; with offsets into one long array it does not). Four rows at a
 * time, since then a sum is loaded and stored once for four products; with eight it falls back to single numbers.
 *
 * <p>No sum is ever split or reordered, so the bits are the same with and without vectors.
 */
final class Rows {
    private Rows() {}

    /** {@code sum += a · m}: every row of {@code m}, times its factor. */
    static void addProduct(float[] sum, float[] a, float[][] m) {
        int i = 0;
        for (; i + 3 < m.length; i += 4) {
            add(sum, a[i], m[i], a[i + 1], m[i + 1], a[i + 2], m[i + 2], a[i + 3], m[i + 3]);
        }
        for (; i < m.length; i++) add(sum, a[i], m[i]);
    }

    /** {@code sum += Σ aᵀ b} over the first {@code count} rows of both. */
    static void addOuter(float[][] sum, float[][] a, float[][] b, int count) {
        int t = 0;
        for (; t + 3 < count; t += 4) {
            float[] a0 = a[t];
            float[] a1 = a[t + 1];
            float[] a2 = a[t + 2];
            float[] a3 = a[t + 3];
            for (int k = 0; k < sum.length; k++) {
                add(sum[k], a0[k], b[t], a1[k], b[t + 1], a2[k], b[t + 2], a3[k], b[t + 3]);
            }
        }
        for (; t < count; t++) {
            for (int k = 0; k < sum.length; k++) add(sum[k], a[t][k], b[t]);
        }
    }

    /** {@code sum += Σ b} over the first {@code count} rows. */
    static void addAll(float[] sum, float[][] b, int count) {
        for (int t = 0; t < count; t++) add(sum, 1, b[t]);
    }

    static void add(float[] sum, float a, float[] x) {
        for (int j = 0; j < sum.length; j++) sum[j] += a * x[j];
    }

    private static void add(
            float[] sum, float a, float[] x, float b, float[] y, float c, float[] z, float d, float[] w) {
        for (int j = 0; j < sum.length; j++) sum[j] += (a * x[j] + b * y[j]) + (c * z[j] + d * w[j]);
    }

    /** Rows become columns. */
    static float[][] transposed(float[][] m) {
        float[][] t = new float[m[0].length][m.length];
        for (int r = 0; r < m.length; r++) {
            for (int c = 0; c < m[r].length; c++) t[c][r] = m[r][c];
        }
        return t;
    }
}
