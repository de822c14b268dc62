package fifthform.curves.network;

import java.util.Arrays;

/** What the network remembers of the session: the state of its recurrent units. Means nothing to another network. */
public final class Memory {
    private final double[] units;

    /** @param units not copied; whoever makes a memory lets go of them */
    Memory(double[] units) {
        this.units = units;
    }

    int size() {
        return units.length;
    }

    /** The units themselves, for the network alone, which changes nothing in them. */
    double[] units() {
        return units;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Memory m && Arrays.equals(units, m.units);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(units);
    }

    @Override
    public String toString() {
        return "Memory" + Arrays.toString(units);
    }
}
