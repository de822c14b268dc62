package fifthform.simulator.rivals;

import fifthform.simulator.rivals.CueWatch.Told;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;

/** Figures over the batches of one entrant. */
final class Figures {
    private Figures() {}

    /** Of the forecast at the cue, less the truth, without its sign, K. */
    static List<Double> cueErrors(Collection<Tried> batches) {
        return batches.stream()
                .flatMap(b -> b.cue().stream())
                .map(c -> Math.abs(c.errorKelvin()))
                .toList();
    }

    static Reached share(Collection<Tried> batches, Predicate<Tried> are) {
        return Reached.percent(batches.stream().map(are::test).toList());
    }

    static Reached shown(Collection<Tried> batches, Tried.Place place) {
        return share(batches, b -> b.shown() == place);
    }

    static Reached inTruth(Collection<Tried> batches, Tried.Place place) {
        return share(batches, b -> b.inTruth() == place);
    }

    /** Of a band of nine in ten: how much of each dip's truths it held, every dip alike, percent. */
    static Reached heldPerDip(Collection<Tried> batches) {
        List<Double> dips = new ArrayList<>();
        for (Tried each : batches) {
            if (each.rows().isEmpty()) continue;
            long held = each.rows().stream().filter(Told::held).count();
            dips.add(100.0 * held / each.rows().size());
        }
        return Reached.mean(dips);
    }

    static Reached heldAtCue(Collection<Tried> batches) {
        return Reached.percent(
                batches.stream().flatMap(b -> b.cue().stream()).map(Told::held).toList());
    }

    static Reached widthPerDip(Collection<Tried> batches) {
        return Reached.mean(batches.stream()
                .filter(b -> !b.rows().isEmpty())
                .map(b -> b.rows().stream()
                        .mapToDouble(r -> r.said().widthKelvin())
                        .average()
                        .orElse(0))
                .toList());
    }

    static Reached widthAtCue(Collection<Tried> batches) {
        return Reached.mean(batches.stream()
                .flatMap(b -> b.cue().stream())
                .map(c -> c.said().widthKelvin())
                .toList());
    }

    static Reached troughError(Collection<Tried> batches) {
        return Reached.mean(batches.stream()
                .filter(b -> b.troughErrorKelvin().isPresent())
                .map(b -> Math.abs(b.troughErrorKelvin().getAsDouble()))
                .toList());
    }

    static Reached place(Collection<Tried> batches) {
        return Reached.mean(batches.stream()
                .map(b -> 100 * b.placeFraction())
                .filter(Double::isFinite)
                .toList());
    }

    static Reached phase(Collection<Tried> batches) {
        return Reached.mean(batches.stream()
                .map(b -> 100 * b.phaseFraction())
                .filter(Double::isFinite)
                .toList());
    }

    static Reached falseWarningsAnHour(Collection<Tried> batches) {
        long events =
                batches.stream().mapToLong(b -> b.steady().falseWarnings()).sum();
        return Reached.rate(
                events, batches.stream().mapToDouble(b -> b.steady().hours()).sum());
    }

    static Reached falseLiftsAnHour(Collection<Tried> batches) {
        long events = batches.stream().mapToLong(b -> b.steady().falseLifts()).sum();
        return Reached.rate(
                events, batches.stream().mapToDouble(b -> b.steady().hoursOff()).sum());
    }

    /** Of those that passed melt-out, how long before the first word came, s. */
    static List<Double> leads(Collection<WarningWatch.Warned> warned) {
        return warned.stream().map(w -> Math.max(0, w.leadSeconds())).toList();
    }
}
