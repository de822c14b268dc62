package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One protocol listening at one setting of the line. */
final class Ear {
    /** More readings say nothing new when two protocols are compared. */
    private static final int MOST_KEPT = 60;

    /**
     * A thin tip that is dipped into water changes by tens of kelvins a second only in its first second (common practice,
     * no source); lines that were held back come together, without any time between.
     */
    private static final double JUMP_KELVIN = 5;

    private static final double JUMP_KELVIN_PER_SECOND = 10;

    private final ProbeProtocol protocol;
    private final LineSettings line;
    private final ProbeProtocol.Decoder decoder;
    private final List<Signal.Measured> readings = new ArrayList<>();
    private final Map<Integer, Reading> last = new TreeMap<>();
    private final Map<Integer, Integer> runs = new HashMap<>();
    private int measured;
    private int faults;
    private int jumps;
    private int smoothRun;
    private long bytes;
    private long settledBytes;
    private long unreadable;
    private int pieces;
    private Instant now = Instant.MIN;

    private record Reading(Instant at, double celsius) {}

    Ear(ProbeProtocol protocol, LineSettings line) {
        this.protocol = protocol;
        this.line = line;
        this.decoder = protocol.newDecoder();
    }

    ProbeProtocol protocol() {
        return protocol;
    }

    void hear(byte[] arrived, Instant at) {
        now = at;
        bytes += arrived.length;
        decoder.feed(arrived, this::take);
    }

    /** What the protocol would send now. */
    Optional<byte[]> ask(Instant at) {
        now = at;
        return decoder.ask(at, this::take);
    }

    private void take(Signal signal) {
        boolean first = measured + faults == 0;
        signal.fold(new Signal.Cases<Void>() {
            @Override
            public Void measured(Signal.Measured m) {
                return Ear.this.measured(m);
            }

            @Override
            public Void openCircuit(Signal.OpenCircuit signal) {
                return fault();
            }

            @Override
            public Void shorted(Signal.Shorted signal) {
                return fault();
            }

            @Override
            public Void outOfRange(Signal.OutOfRange signal) {
                return fault();
            }

            /** An echo or a refusal proves nothing and contradicts nothing. */
            @Override
            public Void aside(Signal.Aside understood) {
                return null;
            }

            @Override
            public Void unreadable(Signal.Unreadable noise) {
                unreadable += noise.bytes();
                pieces++;
                runs.clear();
                return null;
            }
        });
        if (first && measured + faults > 0) {
            bytes -= unreadable;
            unreadable = 0;
        }
        settledBytes = bytes;
    }

    private Void fault() {
        faults++;
        return null;
    }

    private Void measured(Signal.Measured m) {
        measured++;
        Optional<Reading> before = Optional.ofNullable(last.put(m.channel(), new Reading(now, m.tipCelsius())));
        boolean jumped = before.filter(r -> isJump(r, m.tipCelsius())).isPresent();
        if (jumped) jumps++;
        int run = jumped ? 1 : runs.getOrDefault(m.channel(), 0) + 1;
        runs.put(m.channel(), run);
        smoothRun = Math.max(smoothRun, run);
        readings.add(m);
        if (readings.size() > MOST_KEPT) readings.remove(0);
        return null;
    }

    private boolean isJump(Reading before, double celsius) {
        double seconds = Duration.between(before.at(), now).toNanos() / 1e9;
        return Math.abs(celsius - before.celsius()) > JUMP_KELVIN + JUMP_KELVIN_PER_SECOND * seconds;
    }

    boolean isConvincing() {
        return evidence().isConvincing();
    }

    boolean understoodSomething() {
        return measured + faults > 0;
    }

    /** Pieces that meant nothing. */
    int unreadablePieces() {
        return pieces;
    }

    /** Whether it has yet to say what most of the bytes mean: it may still turn out to be a rival. */
    boolean isWaiting() {
        return bytes > 0 && 2 * (bytes - settledBytes) > bytes || measured > 0 && !isConvincing();
    }

    int readings() {
        return measured;
    }

    /** How many readings told a junction or an EMF as well. */
    long tellingMore() {
        return readings.stream()
                .filter(m ->
                        m.junctionCelsius().isPresent() || m.emfMillivolts().isPresent())
                .count();
    }

    Evidence evidence() {
        List<ChannelHeard> channels = new ArrayList<>();
        last.forEach((channel, reading) ->
                channels.add(new ChannelHeard(channel, decoder.channelName(channel), reading.celsius())));
        return new Evidence(measured, faults, bytes, unreadable, jumps, smoothRun, channels);
    }

    Candidate candidate(Optional<String> rejection) {
        return new Candidate(protocol, line, evidence(), rejection);
    }

    Decision decision() {
        return Decision.of(protocol, line, evidence());
    }

    /**
     * Whether both tell the same temperatures: what the one with fewer readings told, the other told too, in the same order.
     * Noise may keep one in ten from one of them.
     */
    boolean agreesWith(Ear other) {
        List<Signal.Measured> few = readings.size() <= other.readings.size() ? readings : other.readings;
        List<Signal.Measured> many = few == readings ? other.readings : readings;
        int common = longestCommon(few, many);
        return common >= 0.9 * few.size() - 1 && common > 0;
    }

    private static int longestCommon(List<Signal.Measured> few, List<Signal.Measured> many) {
        int[][] best = new int[few.size() + 1][many.size() + 1];
        for (int i = 1; i <= few.size(); i++) {
            for (int j = 1; j <= many.size(); j++) {
                best[i][j] = same(few.get(i - 1), many.get(j - 1))
                        ? best[i - 1][j - 1] + 1
                        : Math.max(best[i - 1][j], best[i][j - 1]);
            }
        }
        return best[few.size()][many.size()];
    }

    private static boolean same(Signal.Measured one, Signal.Measured other) {
        double step = Math.max(one.resolutionKelvin(), other.resolutionKelvin());
        return Math.abs(one.tipCelsius() - other.tipCelsius()) <= step;
    }
}
