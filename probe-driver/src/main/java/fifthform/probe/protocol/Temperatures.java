package fifthform.probe.protocol;

import fifthform.curves.input.Sample;
import fifthform.probe.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Fields whose meaning is known to signals; empty where they contradict each other. */
final class Temperatures {
    /** {@link Signal.Measured} promises a step above 0 and at most 20 K. */
    private static final double FINEST_KELVIN = 1e-6;

    private static final double COARSEST_KELVIN = 20;

    /** The same temperature in two units may differ by the rounding of both. */
    private static final double SAME_KELVIN = 0.2;

    private Temperatures() {}

    /** One channel's tip with its junction, if that was told. */
    static Optional<Signal> one(int channel, Field tip, Optional<Field> junction) {
        Optional<Unit> unit = tip.agreedUnit().filter(u -> u != Unit.FOREIGN);
        if (unit.isEmpty()) return Optional.empty();
        if (tip.number().isEmpty()) return Optional.of(new Signal.OpenCircuit(channel));
        Written number = tip.number().get();
        double celsius = unit.get().celsius(number.value());
        OptionalDouble cold = junction.map(Temperatures::celsius).orElse(OptionalDouble.empty());
        // Two bare zeros: a converter that is not there.
        boolean dead = number.value() == 0
                && junction.flatMap(Field::number).filter(n -> n.value() == 0).isPresent();
        if (dead) return Optional.empty();
        if (!(celsius >= Sample.LOWEST_CELSIUS && celsius <= Sample.HIGHEST_CELSIUS))
            return Optional.of(new Signal.OutOfRange(channel, celsius));
        double step = Math.min(Math.max(unit.get().kelvin(number.step()), FINEST_KELVIN), COARSEST_KELVIN);
        return Optional.of(new Signal.Measured(channel, celsius, cold, OptionalDouble.empty(), step));
    }

    /** The same signal, with the junction that another line told, if it is that channel's and the signal has none. */
    static Signal joined(Signal signal, Optional<Field> junction) {
        if (!(signal instanceof Signal.Measured m) || m.junctionCelsius().isPresent()) return signal;
        OptionalDouble cold = junction.filter(field -> field.label().channel() == m.channel())
                .map(Temperatures::celsius)
                .orElse(OptionalDouble.empty());
        return new Signal.Measured(m.channel(), m.tipCelsius(), cold, m.emfMillivolts(), m.resolutionKelvin());
    }

    private static OptionalDouble celsius(Field field) {
        Optional<Unit> unit = field.agreedUnit().filter(u -> u != Unit.FOREIGN);
        if (unit.isEmpty() || field.number().isEmpty()) return OptionalDouble.empty();
        return OptionalDouble.of(unit.get().celsius(field.number().get().value()));
    }

    /**
     * Labelled fields, lowest channel first. Numbers that are no temperature are passed over, unless they report a fault;
     * a number without a word of ours counts only if it has a unit and no other claims to be the tip.
     */
    static Optional<List<Signal>> labelled(List<Field> fields) {
        if (fields.stream().anyMatch(Temperatures::reportsFault)) return Optional.empty();
        List<Field> tips = meaning(fields, Label.Meaning.TIP);
        if (tips.isEmpty()) {
            if (fields.stream().anyMatch(Field::isBare)) return Optional.empty();
            tips = meaning(fields, Label.Meaning.NONE);
            tips.addAll(meaning(fields, Label.Meaning.OTHER));
            tips.removeIf(field -> !field.unit().isTemperature());
        }
        tips.removeIf(field -> field.unit() == Unit.FOREIGN);
        Map<Integer, Field> byChannel = new TreeMap<>();
        for (Field tip : tips) {
            Field before = byChannel.putIfAbsent(tip.label().channel(), tip);
            if (before != null && !agree(before, tip)) return Optional.empty();
        }
        List<Field> junctions = meaning(fields, Label.Meaning.JUNCTION);
        List<Signal> signals = new ArrayList<>();
        for (Map.Entry<Integer, Field> entry : byChannel.entrySet()) {
            Optional<Field> junction = junctions.stream()
                    .filter(field -> field.label().channel() == entry.getKey())
                    .findFirst();
            Optional<Signal> signal = one(entry.getKey(), entry.getValue(), junction);
            if (signal.isEmpty()) return Optional.empty();
            signals.add(signal.get());
        }
        return signals.isEmpty() ? Optional.empty() : Optional.of(signals);
    }

    private static boolean reportsFault(Field field) {
        return field.label().meaning() == Label.Meaning.FAULT_CODE
                && field.number().filter(n -> n.value() == 0).isEmpty();
    }

    private static List<Field> meaning(List<Field> fields, Label.Meaning meaning) {
        return new ArrayList<>(fields.stream()
                .filter(field -> field.label().meaning() == meaning)
                .toList());
    }

    private static boolean agree(Field one, Field other) {
        OptionalDouble first = celsius(one);
        OptionalDouble second = celsius(other);
        return first.isPresent()
                && second.isPresent()
                && Math.abs(first.getAsDouble() - second.getAsDouble()) <= SAME_KELVIN;
    }
}
