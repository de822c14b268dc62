package fifthform.curves.network;

import java.util.Arrays;

/** One finished step of {@link Blocks}: what the network is told then, and what its answers are measured from. */
public final class Moment {
    private final double endSeconds;
    private final double baseCelsius;
    private final double readSeconds;
    private final double readCelsius;
    private final double[] inputs;

    /** @param inputs not copied; whoever makes a moment lets go of them */
    Moment(double endSeconds, double baseCelsius, double readSeconds, double readCelsius, double[] inputs) {
        this.endSeconds = endSeconds;
        this.baseCelsius = baseCelsius;
        this.readSeconds = readSeconds;
        this.readCelsius = readCelsius;
        this.inputs = inputs;
    }

    /** When the step ended, seconds since the start. "Now" in the network's answers is this. */
    public double endSeconds() {
        return endSeconds;
    }

    /** Mean reading of the last 4 s, held where none came, °C. The network's answers are differences from it. */
    public double baseCelsius() {
        return baseCelsius;
    }

    /** When the last reading came, s since the start. */
    public double readSeconds() {
        return readSeconds;
    }

    /** The last reading, °C. */
    public double readCelsius() {
        return readCelsius;
    }

    /** The network's input with this number, {@code 0} to {@code Blocks.INPUTS − 1}. */
    public double input(int index) {
        return inputs[index];
    }

    /** The inputs themselves, for the network alone, which changes nothing in them. */
    double[] inputs() {
        return inputs;
    }

    /** Copies all inputs into {@code target} from {@code from} on. */
    public void copyInto(float[] target, int from) {
        for (int i = 0; i < inputs.length; i++) target[from + i] = (float) inputs[i];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Moment m
                && endSeconds == m.endSeconds
                && baseCelsius == m.baseCelsius
                && readSeconds == m.readSeconds
                && readCelsius == m.readCelsius
                && Arrays.equals(inputs, m.inputs);
    }

    @Override
    public int hashCode() {
        return Double.hashCode(endSeconds) * 31 + Arrays.hashCode(inputs);
    }

    @Override
    public String toString() {
        return "Moment[" + endSeconds + " s, " + baseCelsius + " °C, " + Arrays.toString(inputs) + "]";
    }
}
