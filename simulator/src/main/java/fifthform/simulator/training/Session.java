package fifthform.simulator.training;

import java.util.Objects;

/**
 * One session in a simulated kitchen as a lesson: what the network is told in each step of 2 s, and what the truth was.
 * Temperatures are relative to the step's base, the mean reading of its last 4 s, as the network answers them.
 *
 * <p>The arrays are not copied and belong to the session from then on; nobody changes them.
 */
public final class Session {
    /** How many numbers the network is told in a step. */
    public static final int INPUTS = 26;

    /** In {@code place} and {@code dip}: nobody could say, or no dip. */
    public static final int NONE = -1;

    /** The bowl stands in or over warm water. */
    public static final byte BATH = 0;

    /** The bowl stands on the table. */
    public static final byte TABLE = 1;

    /** The bowl stands in cold water. */
    public static final byte COLD_WATER = 2;

    private static final int PLACES = 3;
    private static final float MOST_KELVIN = 200;

    final long kitchen;
    final int steps;
    final float[] inputs;
    final float[] turn;
    final float[] turnLater;
    final byte[] place;
    final float[] bulk;
    final float[] weight;
    final int[] dip;

    /**
     * T steps of a session.
     *
     * @param kitchen names the kitchen: sessions of one kitchen are never divided between training and validation
     * @param inputs shape (T × {@value #INPUTS}), step after step, finite
     * @param turn shape (T); the bulk's turning point if lifted now, less base, K; NaN where there is none to learn
     * @param turnLater shape (T); the same if lifted 4 s later
     * @param place shape (T); {@link #BATH}, {@link #TABLE}, {@link #COLD_WATER} or {@link #NONE}
     * @param bulk shape (T); true bulk in the reading's scale, less base, K; NaN where it is not to be learned
     * @param weight shape (T); how much the turning points of this step count, ≥ 0, zero where both are NaN. Every dip
     *     should have the same total
     * @param dip shape (T); number of the dip within the session from 0 on, or {@link #NONE}, where the weight is zero
     */
    public Session(
            long kitchen,
            float[] inputs,
            float[] turn,
            float[] turnLater,
            byte[] place,
            float[] bulk,
            float[] weight,
            int[] dip) {
        this.kitchen = kitchen;
        this.steps = turn.length;
        this.inputs = Objects.requireNonNull(inputs, "inputs");
        this.turn = turn;
        this.turnLater = Objects.requireNonNull(turnLater, "turnLater");
        this.place = Objects.requireNonNull(place, "place");
        this.bulk = Objects.requireNonNull(bulk, "bulk");
        this.weight = Objects.requireNonNull(weight, "weight");
        this.dip = Objects.requireNonNull(dip, "dip");
        checkLengths();
        for (int i = 0; i < inputs.length; i++) check(Float.isFinite(inputs[i]), "inputs", i / INPUTS, inputs[i]);
        for (int t = 0; t < steps; t++) checkStep(t);
    }

    private void checkLengths() {
        if (steps == 0) throw new IllegalArgumentException("a session must have one step at least");
        length(inputs.length, steps * INPUTS, "inputs");
        length(turnLater.length, steps, "turnLater");
        length(place.length, steps, "place");
        length(bulk.length, steps, "bulk");
        length(weight.length, steps, "weight");
        length(dip.length, steps, "dip");
    }

    private static void length(int is, int wanted, String name) {
        if (is != wanted) throw new IllegalArgumentException(name + " must have length " + wanted + ", had " + is);
    }

    private void checkStep(int t) {
        check(label(turn[t]), "turn", t, turn[t]);
        check(label(turnLater[t]), "turnLater", t, turnLater[t]);
        check(label(bulk[t]), "bulk", t, bulk[t]);
        check(place[t] >= NONE && place[t] < PLACES, "place", t, place[t]);
        check(dip[t] >= NONE, "dip", t, dip[t]);
        boolean counts = weight[t] > 0;
        check(weight[t] >= 0 && Float.isFinite(weight[t]), "weight", t, weight[t]);
        check(!counts || !Float.isNaN(turn[t]) || !Float.isNaN(turnLater[t]), "weight without a turn", t, weight[t]);
        check(!counts || dip[t] != NONE, "weight without a dip", t, weight[t]);
    }

    private static boolean label(float kelvin) {
        return Float.isNaN(kelvin) || Math.abs(kelvin) <= MOST_KELVIN;
    }

    private static void check(boolean right, String name, int step, float value) {
        if (!right) throw new IllegalArgumentException(name + " is impossible at step " + step + ": " + value);
    }

    /** The kitchen in which this happened. */
    public long kitchen() {
        return kitchen;
    }

    /** How many steps of 2 s. */
    public int steps() {
        return steps;
    }
}
