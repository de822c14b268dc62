package fifthform.simulator.bench;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.Signal;
import fifthform.probe.Signal.Aside;
import fifthform.probe.Signal.Measured;
import fifthform.probe.Signal.OpenCircuit;
import fifthform.probe.Signal.OutOfRange;
import fifthform.probe.Signal.Shorted;
import fifthform.probe.Signal.Unreadable;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;

/** What comes over one probe's line as inputs, judged as the reader of a real port judges it. */
final class LineJudge {
    private static final Duration SILENCE = Duration.ofSeconds(2);
    private static final Duration GARBLED_PAUSE = Duration.ofSeconds(1);
    /** The probe's; the adapter's other channels are passed over. */
    private static final int CHANNEL = 0;

    private static final double LEAST_SIGMA_KELVIN = 0.001;

    private final ProbeId probe;
    private final Consumer<Input> sink;
    private Optional<Instant> lastHeard = Optional.empty();
    private Optional<Instant> lastGarbled = Optional.empty();
    private Optional<Instant> lastUnplugged = Optional.empty();

    LineJudge(ProbeId probe, Consumer<Input> sink) {
        this.probe = probe;
        this.sink = sink;
    }

    /** A new line: silence counts from here. */
    void opened(Instant at) {
        lastHeard = Optional.of(at);
        lastUnplugged = Optional.empty();
    }

    void heard(Instant at, Signal signal) {
        lastHeard = Optional.of(at);
        signal.fold(new Meaning(at)).ifPresent(sink);
    }

    /** The line works and its time has come to here. */
    void passed(Instant at) {
        if (longAgo(lastHeard, SILENCE, at)) {
            lastHeard = Optional.of(at);
            sink.accept(new ProbeFault(at, probe, Cause.SILENT));
        }
    }

    /** The line is gone or cannot be opened. */
    void unplugged(Instant at) {
        if (longAgo(lastUnplugged, SILENCE, at)) {
            lastUnplugged = Optional.of(at);
            sink.accept(new ProbeFault(at, probe, Cause.UNPLUGGED));
        }
    }

    private static boolean longAgo(Optional<Instant> last, Duration pause, Instant at) {
        return last.isEmpty() || !at.isBefore(last.get().plus(pause));
    }

    private final class Meaning implements Signal.Cases<Optional<Input>> {
        private final Instant at;

        Meaning(Instant at) {
            this.at = at;
        }

        /** A rounded number may lie anywhere within its step: step/√12 (rectangular distribution, JCGM 100:2008 4.3.7). */
        @Override
        public Optional<Input> measured(Measured signal) {
            if (signal.channel() != CHANNEL) return Optional.empty();
            double sigmaKelvin = Math.max(LEAST_SIGMA_KELVIN, signal.resolutionKelvin() / Math.sqrt(12));
            return Optional.of(new Sample(
                    at, probe, signal.tipCelsius(), sigmaKelvin, signal.junctionCelsius(), signal.emfMillivolts()));
        }

        @Override
        public Optional<Input> openCircuit(OpenCircuit signal) {
            return fault(Cause.OPEN_CIRCUIT);
        }

        @Override
        public Optional<Input> shorted(Shorted signal) {
            return fault(Cause.SHORT_CIRCUIT);
        }

        @Override
        public Optional<Input> outOfRange(OutOfRange signal) {
            return fault(Cause.OUT_OF_RANGE);
        }

        @Override
        public Optional<Input> aside(Aside signal) {
            return Optional.empty();
        }

        @Override
        public Optional<Input> unreadable(Unreadable signal) {
            if (!longAgo(lastGarbled, GARBLED_PAUSE, at)) return Optional.empty();
            lastGarbled = Optional.of(at);
            return fault(Cause.GARBLED);
        }

        private Optional<Input> fault(Cause cause) {
            return Optional.of(new ProbeFault(at, probe, cause));
        }
    }
}
