package fifthform.probe.find;

import fifthform.probe.LineSettings;
import fifthform.probe.LineSettings.Parity;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.TunableLink;
import fifthform.probe.link.TunableSource;
import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * A wire between a sender and a receiver that need not agree about speed and parity: the sender's bytes as levels over
 * time, sampled by an asynchronous receiver in the middle of each of its own bits. So what comes out at a wrong speed is what
 * a real line would give. A pseudo-terminal cannot do that, since it takes any speed.
 */
final class SimulatedWire implements TunableSource, TunableLink {
    /** What a receiver does when a stop bit is missing: there are both kinds. */
    enum AfterBadStop {
        /** Waits until the line is idle. */
        WAITS,
        /** Takes the low bit for the next start bit. */
        STARTS_AGAIN
    }

    private static final double READ_SECONDS = 0.2;
    private static final double COALESCED_SECONDS = 0.012;

    private final Supplier<byte[]> frames;
    private final double intervalSeconds;
    private final LineSettings sent;
    private final double bitSeconds;
    private final double noisePerSample;
    private final AfterBadStop afterBadStop;
    private final SplittableRandom random;
    /** Sent so far: when each byte's start bit begins, and its bits from the start bit on. */
    private final List<Double> starts = new ArrayList<>();

    private final List<Integer> levels = new ArrayList<>();
    private double nextFrame;
    private LineSettings line = new LineSettings(9600);
    private double now;
    private double receiver;
    private Optional<Double> forcedStart = Optional.empty();
    private Optional<Received> ahead = Optional.empty();
    int opened;

    private record Received(double at, byte value) {}

    SimulatedWire(
            Supplier<byte[]> frames,
            double intervalSeconds,
            LineSettings sent,
            double noisePerSample,
            AfterBadStop afterBadStop,
            SplittableRandom random) {
        this.frames = frames;
        this.intervalSeconds = intervalSeconds;
        this.sent = sent;
        this.bitSeconds = (1 + random.nextDouble(-0.01, 0.01)) / sent.baud(); // clocks differ by a per cent
        this.noisePerSample = noisePerSample;
        this.afterBadStop = afterBadStop;
        this.random = random;
        this.nextFrame = random.nextDouble(intervalSeconds) - intervalSeconds; // opened at any moment
    }

    @Override
    public String place() {
        return "wire";
    }

    @Override
    public TunableLink open() {
        opened++;
        return this;
    }

    @Override
    public void tune(LineSettings settings) {
        line = settings;
        now += 0.002;
        receiver = now;
        ahead = Optional.empty();
        forcedStart = Optional.empty();
    }

    @Override
    public Optional<Arrival> read() {
        double until = now + READ_SECONDS;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Optional<Received> next = next(until);
        if (next.isPresent()) until = next.get().at() + COALESCED_SECONDS;
        while (next.isPresent()) {
            bytes.write(next.get().value());
            ahead = Optional.empty();
            next = next(until);
        }
        now = until;
        return Optional.of(new Arrival(Instant.EPOCH.plusNanos((long) (now * 1e9)), bytes.toByteArray()));
    }

    double nowSeconds() {
        return now;
    }

    /** The next byte that is complete before {@code until}. */
    private Optional<Received> next(double until) {
        while (ahead.isEmpty()) {
            Optional<Received> received = receive(until);
            if (received.isEmpty()) return Optional.empty();
            ahead = received;
        }
        return ahead.filter(r -> r.at() <= until);
    }

    private Optional<Received> receive(double until) {
        double bit = 1.0 / line.baud();
        while (true) {
            Optional<Double> edge = forcedStart.isPresent() ? forcedStart : fall(receiver, until);
            if (edge.isEmpty()) {
                receiver = Math.max(receiver, until - 12 * bit);
                return Optional.empty();
            }
            double start = forcedStart.isPresent() ? edge.get() : edge.get() + random.nextDouble() * bit / 16;
            forcedStart = Optional.empty();
            if (level(start + 0.5 * bit) == 1) {
                receiver = start + 0.5 * bit;
                continue;
            }
            int value = 0;
            for (int i = 0; i < 8; i++) value |= sample(start + (i + 1.5) * bit) << i;
            double stop = start + (line.parity() == Parity.NONE ? 9.5 : 10.5) * bit;
            receiver = stop;
            if (sample(stop) == 0) afterBadStop(stop, bit);
            return Optional.of(new Received(stop, (byte) value));
        }
    }

    private void afterBadStop(double stop, double bit) {
        if (afterBadStop == AfterBadStop.STARTS_AGAIN) {
            forcedStart = Optional.of(stop - 0.5 * bit);
            return;
        }
        receiver = stop;
        while (level(receiver) == 0) receiver += bitSeconds / 8;
    }

    private int sample(double at) {
        int level = level(at);
        return noisePerSample > 0 && random.nextDouble() < noisePerSample ? 1 - level : level;
    }

    /** The next falling edge from {@code from} on. */
    private Optional<Double> fall(double from, double until) {
        send(until + 0.01);
        for (int i = Math.max(0, indexAt(from)); i < starts.size(); i++) {
            if (starts.get(i) > until) return Optional.empty();
            int before = 1;
            for (int k = 0; k < bits(); k++) {
                int level = levels.get(i) >> k & 1;
                double at = starts.get(i) + k * bitSeconds;
                if (before == 1 && level == 0 && at >= from) return Optional.of(at);
                before = level;
            }
        }
        return Optional.empty();
    }

    private int level(double at) {
        send(at + 0.01);
        int i = indexAt(at);
        if (i < 0) return 1;
        int k = (int) ((at - starts.get(i)) / bitSeconds);
        return k < bits() ? levels.get(i) >> k & 1 : 1;
    }

    /** The last byte that began before {@code at}, or −1. */
    private int indexAt(double at) {
        int low = -1;
        int high = starts.size();
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (starts.get(middle) <= at) low = middle;
            else high = middle;
        }
        return low;
    }

    private int bits() {
        return 9 + (sent.parity() == Parity.NONE ? 0 : 1) + sent.stopBits();
    }

    private void send(double until) {
        while (nextFrame <= until) {
            double at = nextFrame;
            for (byte b : frames.get()) {
                starts.add(at);
                levels.add(levels(b & 0xFF));
                at += bits() * bitSeconds;
            }
            nextFrame = Math.max(nextFrame + intervalSeconds, at);
        }
    }

    private int levels(int value) {
        int bits = value << 1;
        int k = 9;
        if (sent.parity() != Parity.NONE) {
            int ones = Integer.bitCount(value) & 1;
            bits |= (sent.parity() == Parity.EVEN ? ones : 1 - ones) << k++;
        }
        for (int i = 0; i < sent.stopBits(); i++) bits |= 1 << k++;
        return bits;
    }

    @Override
    public void write(byte[] bytes) {}

    @Override
    public void close() {}
}
