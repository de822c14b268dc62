package fifthform.probe.protocol;

import fifthform.curves.input.Sample;
import fifthform.probe.Signal;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fields whose meaning is known to signals; empty where they contradict each other. */
final class Temperatures {
    /** {@link Signal.Measured} promises a step above 0 and at most 20 K. */
    private static final double FINEST_KELVIN = 1e-6;

    private static final double COARSEST_KELVIN = 20;

    private Temperatures() {}

    /** One channel's tip with its junction, if that was told. */
    static Optional<Signal> one(int channel, Field tip, Optional<Field> junction) {
        Optional<Unit> unit = tip.agreedUnit();
        if (unit.isEmpty() || unit.get() == Unit.FOREIGN) return Optional.empty();
        if (tip.number().isEmpty()) return Optional.of(new Signal.OpenCircuit(channel));
        Written number = tip.number().get();
        double celsius = unit.get().celsius(number.value());
        // Two bare zeros: a converter that is not there. Zeros before a whole number: a code, no temperature.
        boolean dead = number.value() == 0
                && junction.isPresent()
                && junction.get().number().isPresent()
                && junction.get().number().get().value() == 0;
        if (dead || number.isPadded()) return Optional.empty();
        if (!(celsius >= Sample.LOWEST_CELSIUS && celsius <= Sample.HIGHEST_CELSIUS))
            return Optional.of(new Signal.OutOfRange(channel, celsius));
        OptionalDouble cold = junction.isPresent() ? celsius(junction.get()) : OptionalDouble.empty();
        double step = Math.min(Math.max(unit.get().kelvin(number.step()), FINEST_KELVIN), COARSEST_KELVIN);
        return Optional.of(new Signal.Measured(channel, celsius, cold, OptionalDouble.empty(), step));
    }

    /** The same signal, with the junction that another line told, if it is that channel's and the signal has none. */
    static Signal joined(Signal signal, Optional<Field> junction) {
        if (junction.isEmpty()) return signal;
        if (!(signal instanceof Signal.Measured m) || m.junctionCelsius().isPresent()) return signal;
        OptionalDouble cold = junction.filter(field -> field.label().channel() == m.channel())
                .map(Temperatures::celsius)
                .orElse(OptionalDouble.empty());
        return new Signal.Measured(m.channel(), m.tipCelsius(), cold, m.emfMillivolts(), m.resolutionKelvin());
    }

    static OptionalDouble celsius(Field field) {
        Optional<Unit> unit = field.agreedUnit();
        if (unit.isEmpty() || unit.get() == Unit.FOREIGN || field.number().isEmpty()) return OptionalDouble.empty();
        return OptionalDouble.of(unit.get().celsius(field.number().get().value()));
    }
}
