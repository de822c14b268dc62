package fifthform.simulator.training;

import java.util.Arrays;

/** One walk through a recurrent layer and back, and what has to be kept between the two. Used again and again. */
final class GruPass {
    private final int units;
    /** Row t is the memory before step t; row 0 stays empty. */
    private float[][] memory = {};

    /** The same rows but the first: row t is the memory after step t. */
    private float[][] after = {};

    private float[][] sum = {};
    private float[][] stay = {};
    private float[][] seen = {};
    private float[][] fresh = {};
    private float[][] recalled = {};
    private float[][] inputSlope = {};
    private float[][] memorySlope = {};
    private final float[] fromMemory;
    private final float[] gates;
    private final float[] ahead;
    private final float[] stayRow;
    private final float[] seenRow;
    private final float[] freshRow;

    GruPass(int units) {
        this.units = units;
        fromMemory = new float[3 * units];
        gates = new float[2 * units];
        ahead = new float[units];
        stayRow = new float[units];
        seenRow = new float[units];
        freshRow = new float[units];
    }

    private void makeRoom(int steps) {
        if (stay.length >= steps) return;
        memory = new float[steps + 1][units];
        after = Arrays.copyOfRange(memory, 1, steps + 1);
        sum = new float[steps][3 * units];
        stay = new float[steps][units];
        seen = new float[steps][units];
        fresh = new float[steps][units];
        recalled = new float[steps][units];
        inputSlope = new float[steps][3 * units];
        memorySlope = new float[steps][3 * units];
    }

    void forward(GruWeights w, float[][] x, int steps) {
        makeRoom(steps);
        for (int t = 0; t < steps; t++) {
            System.arraycopy(w.bias[0], 0, sum[t], 0, 3 * units);
            Rows.addProduct(sum[t], x[t], w.input);
        }
        for (int t = 0; t < steps; t++) step(w, t);
    }

    /** What the last {@link #forward} led to: row t is the memory after step t. */
    float[][] after() {
        return after;
    }

    private void step(GruWeights w, int t) {
        Arrays.fill(fromMemory, 0, 2 * units, 0);
        System.arraycopy(w.memoryBias[0], 0, fromMemory, 2 * units, units);
        Rows.addProduct(fromMemory, memory[t], w.memory);
        System.arraycopy(sum[t], 0, gates, 0, 2 * units);
        add(gates, fromMemory);
        Squash.logistic(gates);
        System.arraycopy(gates, 0, stay[t], 0, units);
        System.arraycopy(gates, units, seen[t], 0, units);
        System.arraycopy(fromMemory, 2 * units, recalled[t], 0, units);
        System.arraycopy(sum[t], 2 * units, fresh[t], 0, units);
        addTimes(fresh[t], seen[t], recalled[t]);
        Squash.tanh(fresh[t]);
        mix(after[t], stay[t], fresh[t], memory[t]);
    }

    private static void add(float[] sum, float[] x) {
        for (int j = 0; j < sum.length; j++) sum[j] += x[j];
    }

    private static void addTimes(float[] sum, float[] a, float[] x) {
        for (int j = 0; j < sum.length; j++) sum[j] += a[j] * x[j];
    }

    private static void mix(float[] after, float[] stay, float[] fresh, float[] before) {
        for (int j = 0; j < after.length; j++) after[j] = fresh[j] + stay[j] * (before[j] - fresh[j]);
    }

    /**
     * Back through time.
     *
     * @param slope row t is the loss's slope along the memory after step t, from everything but the next step
     * @param x as handed to {@link #forward}
     * @param into what the weights contribute is added here
     */
    void backward(GruWeights w, float[][] slope, float[][] x, int steps, GruWeights into) {
        float[][] back = Rows.transposed(w.memory);
        Arrays.fill(ahead, 0);
        for (int t = steps - 1; t >= 0; t--) {
            add(ahead, slope[t]);
            slopes(t);
            Rows.addProduct(ahead, memorySlope[t], back);
        }
        Rows.addOuter(into.input, x, inputSlope, steps);
        Rows.addOuter(into.memory, memory, memorySlope, steps);
        Rows.addAll(into.bias[0], inputSlope, steps);
        for (int t = 0; t < steps; t++) {
            System.arraycopy(memorySlope[t], 2 * units, freshRow, 0, units);
            add(into.memoryBias[0], freshRow);
        }
    }

    /** From the slope along the memory ahead to those along the three sums, and straight along the memory before. */
    private void slopes(int t) {
        float[] freshSlope = freshRow;
        freshSlope(freshSlope, ahead, stay[t], fresh[t]);
        gateSlope(seenRow, freshSlope, recalled[t], seen[t]);
        staySlope(stayRow, ahead, memory[t], fresh[t], stay[t]);
        put(inputSlope[t], stayRow, seenRow, freshSlope);
        times(freshSlope, seen[t]);
        put(memorySlope[t], stayRow, seenRow, freshSlope);
        times(ahead, stay[t]);
    }

    private void put(float[] row, float[] first, float[] second, float[] third) {
        System.arraycopy(first, 0, row, 0, units);
        System.arraycopy(second, 0, row, units, units);
        System.arraycopy(third, 0, row, 2 * units, units);
    }

    private static void freshSlope(float[] out, float[] ahead, float[] stay, float[] fresh) {
        for (int j = 0; j < out.length; j++) out[j] = ahead[j] * (1 - stay[j]) * (1 - fresh[j] * fresh[j]);
    }

    private static void gateSlope(float[] out, float[] slope, float[] factor, float[] gate) {
        for (int j = 0; j < out.length; j++) out[j] = slope[j] * factor[j] * (gate[j] * (1 - gate[j]));
    }

    private static void staySlope(float[] out, float[] ahead, float[] before, float[] fresh, float[] stay) {
        for (int j = 0; j < out.length; j++) {
            out[j] = ahead[j] * (before[j] - fresh[j]) * (stay[j] * (1 - stay[j]));
        }
    }

    private static void times(float[] product, float[] x) {
        for (int j = 0; j < product.length; j++) product[j] *= x[j];
    }

    /** The slope along the layer's inputs, after {@link #backward}. */
    void inputSlope(GruWeights w, float[][] out, int steps) {
        float[][] back = Rows.transposed(w.input);
        for (int t = 0; t < steps; t++) {
            Arrays.fill(out[t], 0);
            Rows.addProduct(out[t], inputSlope[t], back);
        }
    }
}
