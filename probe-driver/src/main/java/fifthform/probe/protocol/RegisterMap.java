package fifthform.probe.protocol;

import fifthform.probe.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Which registers hold which channel, and what their bits mean: {@code temperature = number × scale + offset} in the
 * device's unit.
 *
 * @param channels first register of each channel, counted from 0
 * @param junction first register of the cold junction's temperature
 * @param lowWordFirst whether the register with the lower bits comes first, against the usual order
 * @param scale what one step is worth in {@code unit}, not 0
 * @param offset in {@code unit}
 * @param open bits that stand for an open circuit, beside those that usually do
 */
record RegisterMap(
        List<Integer> channels,
        OptionalInt junction,
        RegisterFormat format,
        boolean lowWordFirst,
        double scale,
        double offset,
        Unit unit,
        Set<Long> open) {
    RegisterMap {
        channels = List.copyOf(channels);
        if (channels.isEmpty()) throw new IllegalArgumentException("channels must name at least one register");
        Objects.requireNonNull(junction, "junction");
        Objects.requireNonNull(format, "format");
        if (!(Double.isFinite(scale) && scale != 0))
            throw new IllegalArgumentException("scale must be finite and not 0, was " + scale);
        if (!Double.isFinite(offset)) throw new IllegalArgumentException("offset must be finite, was " + offset);
        Objects.requireNonNull(unit, "unit");
        open = Set.copyOf(open);
    }

    /** The lowest register of all. */
    int first() {
        int lowest = channels.stream().mapToInt(register -> register).min().orElseThrow();
        return Math.min(lowest, junction.orElse(lowest));
    }

    /** How many registers one question for all of them reads. */
    int count() {
        int highest = channels.stream().mapToInt(register -> register).max().orElseThrow();
        return Math.max(highest, junction.orElse(highest)) + format.registers() - first();
    }

    /**
     * What an answer means.
     *
     * @param data the registers from {@link #first} on, high byte first
     * @return one signal a channel; empty where tip and junction are zero to the last bit, as from a converter that is not
     *     there
     */
    List<Signal> signals(byte[] data) {
        boolean dead = junction.isPresent()
                && bits(data, junction.getAsInt()) == 0
                && channels.stream().allMatch(register -> bits(data, register) == 0);
        if (dead) return List.of();
        OptionalDouble cold =
                junction.isPresent() ? junctionCelsius(data, junction.getAsInt()) : OptionalDouble.empty();
        List<Signal> signals = new ArrayList<>();
        for (int channel = 0; channel < channels.size(); channel++)
            signals.add(signal(channel, bits(data, channels.get(channel)), cold));
        return signals;
    }

    private Signal signal(int channel, long bits, OptionalDouble cold) {
        Optional<Double> number = number(bits);
        if (number.isEmpty()) return new Signal.OpenCircuit(channel);
        double stepKelvin = Math.abs(unit.kelvin(format.step(number.get()) * scale));
        return Temperatures.tip(channel, celsius(number.get()), cold, OptionalDouble.empty(), stepKelvin);
    }

    private OptionalDouble junctionCelsius(byte[] data, int register) {
        return number(bits(data, register))
                .map(number -> OptionalDouble.of(celsius(number)))
                .orElse(OptionalDouble.empty());
    }

    private Optional<Double> number(long bits) {
        return open.contains(bits) || format.isUsuallyOpen(bits) ? Optional.empty() : format.value(bits);
    }

    private double celsius(double number) {
        return unit.celsius(number * scale + offset);
    }

    private long bits(byte[] data, int register) {
        int at = 2 * (register - first());
        long one = word(data, at);
        if (format.registers() == 1) return one;
        long other = word(data, at + 2);
        return lowWordFirst ? other << 16 | one : one << 16 | other;
    }

    private static long word(byte[] data, int at) {
        return (data[at] & 0xFFL) << 8 | data[at + 1] & 0xFFL;
    }
}
