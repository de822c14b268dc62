package fifthform.probe.protocol;

import fifthform.curves.input.Sample;
import fifthform.probe.Signal;
import java.util.Optional;
import java.util.OptionalDouble;

/** Temperatures to signals, in one place for all protocols: what is rounded, what no kitchen has, what contradicts itself. */
final class Temperatures {
    private static final double FINEST_KELVIN = 1e-6;

    private Temperatures() {}

    /** To a millionth of a kelvin, so that recordings keep it exactly. */
    static double rounded(double celsius) {
        return Math.round(celsius * 1e6) / 1e6;
    }

    static boolean isOfAKitchen(double celsius) {
        return celsius >= Sample.LOWEST_CELSIUS && celsius <= Sample.HIGHEST_CELSIUS;
    }

    /**
     * A tip's temperature, or that no kitchen has it.
     *
     * @param stepKelvin the step of the number as written; what {@link Signal.Measured} does not take is cut off
     */
    static Signal tip(
            int channel, double celsius, OptionalDouble junction, OptionalDouble emfMillivolts, double stepKelvin) {
        double tip = rounded(celsius);
        if (!isOfAKitchen(tip)) return new Signal.OutOfRange(channel, tip);
        double step = Math.min(Math.max(stepKelvin, FINEST_KELVIN), Signal.Measured.COARSEST_KELVIN);
        return new Signal.Measured(channel, tip, junction, emfMillivolts, step);
    }

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
        OptionalDouble cold = junction.isPresent() ? celsius(junction.get()) : OptionalDouble.empty();
        return Optional.of(
                tip(channel, celsius, cold, OptionalDouble.empty(), unit.get().kelvin(number.step())));
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
