package fifthform.probe.reader;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.Signal;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

/**
 * Turns what the wire says into what the engine is told. Not thread-safe.
 *
 * <p>Times handed on never decrease, even where the clock that dates a loss and the link's own times differ a little.
 */
final class SignalJudge {
    /** Twice the slowest usual interval of an adapter, one second (common practice, no source). */
    static final Duration SILENCE = Duration.ofSeconds(2);
    /** Noise comes in bursts of many unreadable pieces; one a second tells as much. */
    static final Duration GARBLED_PAUSE = Duration.ofSeconds(1);

    /** Keeps the standard uncertainty above zero for adapters that print many digits. */
    private static final double SMALLEST_SIGMA_KELVIN = 0.001;

    private final Map<Integer, ProbeId> probes;
    private final Consumer<? super Input> sink;
    private final Map<ProbeId, FloodGate> gates = new LinkedHashMap<>();
    private final Map<ProbeId, Instant> lastHeard = new LinkedHashMap<>();
    private Optional<Instant> lastGarbled = Optional.empty();
    private Optional<Instant> lastUnplugged = Optional.empty();
    private OptionalInt spokeFirst = OptionalInt.empty();
    private Instant now = Instant.MIN;

    SignalJudge(Map<Integer, ProbeId> probes, Consumer<? super Input> sink) {
        this.probes = probes;
        this.sink = Objects.requireNonNull(sink, "sink");
        probes.values().forEach(probe -> gates.put(probe, new FloodGate(probe, sink)));
    }

    /** A new link: silence counts from its first arrival, whose time is the link's own and not the clock's. */
    void opened() {
        lastHeard.clear();
    }

    void signal(Instant at, Signal signal) {
        advance(at);
        signal.fold(new Signal.Cases<Void>() {
            @Override
            public Void measured(Signal.Measured m) {
                heard(m.channel()).ifPresent(probe -> gates.get(probe).offer(sample(probe, m)));
                return null;
            }

            @Override
            public Void openCircuit(Signal.OpenCircuit signal) {
                return fault(signal.channel(), Cause.OPEN_CIRCUIT);
            }

            @Override
            public Void shorted(Signal.Shorted signal) {
                return fault(signal.channel(), Cause.SHORT_CIRCUIT);
            }

            @Override
            public Void outOfRange(Signal.OutOfRange signal) {
                return fault(signal.channel(), Cause.OUT_OF_RANGE);
            }

            @Override
            public Void aside(Signal.Aside signal) {
                return null; // no news of the probe: if nothing else comes, it is silent
            }

            @Override
            public Void unreadable(Signal.Unreadable signal) {
                garbled();
                return null;
            }
        });
    }

    /** The link works and its time has come to here: an arrival has been read to its end. Tells of each probe that has been silent too long. */
    void passed(Instant at) {
        advance(at);
        lastUnplugged = Optional.empty();
        gates.values().forEach(gate -> gate.passed(now));
        probes.values().forEach(probe -> lastHeard.putIfAbsent(probe, now));
        for (Map.Entry<ProbeId, Instant> entry : lastHeard.entrySet()) {
            if (Duration.between(entry.getValue(), now).compareTo(SILENCE) < 0) continue;
            entry.setValue(now);
            sink.accept(new ProbeFault(now, entry.getKey(), Cause.SILENT));
        }
    }

    /** The link is gone or cannot be opened; told at once, and again at each failed attempt once {@link #SILENCE} has passed. */
    void unplugged(Instant at) {
        advance(at);
        boolean toldLately = lastUnplugged
                .filter(last -> Duration.between(last, now).compareTo(SILENCE) < 0)
                .isPresent();
        if (toldLately) return;
        lastUnplugged = Optional.of(now);
        everyProbe(Cause.UNPLUGGED);
    }

    private void garbled() {
        lastHeard.replaceAll((probe, last) -> now);
        boolean toldLately = lastGarbled
                .filter(last -> Duration.between(last, now).compareTo(GARBLED_PAUSE) < 0)
                .isPresent();
        if (toldLately) return;
        lastGarbled = Optional.of(now);
        everyProbe(Cause.GARBLED);
    }

    private Void fault(int channel, Cause cause) {
        heard(channel).ifPresent(probe -> gates.get(probe).offer(new ProbeFault(now, probe, cause)));
        return null;
    }

    private void everyProbe(Cause cause) {
        probes.values().stream().distinct().forEach(probe -> sink.accept(new ProbeFault(now, probe, cause)));
    }

    private Optional<ProbeId> heard(int channel) {
        Optional<ProbeId> probe = Optional.ofNullable(probes.get(channel)).or(() -> firstToSpeak(channel));
        probe.ifPresent(known -> lastHeard.put(known, now));
        return probe;
    }

    private Optional<ProbeId> firstToSpeak(int channel) {
        if (spokeFirst.isEmpty()) spokeFirst = OptionalInt.of(channel);
        boolean isIt = spokeFirst.getAsInt() == channel;
        return isIt ? Optional.ofNullable(probes.get(ProbeLine.FIRST_TO_SPEAK)) : Optional.empty();
    }

    private Sample sample(ProbeId probe, Signal.Measured m) {
        double sigmaKelvin = Math.max(m.resolutionSigmaKelvin(), SMALLEST_SIGMA_KELVIN);
        return new Sample(now, probe, m.tipCelsius(), sigmaKelvin, m.junctionCelsius(), m.emfMillivolts());
    }

    private void advance(Instant at) {
        if (at.isAfter(now)) now = at;
    }
}
