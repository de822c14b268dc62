package fifthform.monitor.app;

import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.monitor.intake.LiveSource.Ticking;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.session.SessionListener;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkSource;
import fifthform.probe.reader.ProbeLine;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * An adapter that says a demo batch again and again, ten lines a second: at the pace of life, or as fast as the session
 * takes them.
 */
final class BenchProbe implements ProbeChoice {
    static final int HERTZ = 10;

    private static final Duration PERIOD = Duration.ofMillis(1000 / HERTZ);

    /** So many lines may wait for the session where time is no matter. */
    private static final int AHEAD = 512;

    private final Pace pace;
    private final int lines;
    private final BiConsumer<Instant, Long> arrived;
    private final double[] curve = curve();
    private final Semaphore room = new Semaphore(AHEAD);

    /** How fast the lines come. */
    enum Pace {
        LIFE,
        AT_ONCE
    }

    /**
     * @param lines how many there are
     * @param arrived told of each line its time in the session and {@link System#nanoTime()}
     */
    BenchProbe(Pace pace, int lines, BiConsumer<Instant, Long> arrived) {
        this.pace = pace;
        this.lines = lines;
        this.arrived = arrived;
    }

    /** The demo batch, ten times a second, °C. */
    private static double[] curve() {
        Session session = JournalReader.read(Path.of("src/test/resources/tapes/demo-own-way.tempering.jsonl"))
                .fold(s -> s, problems -> {
                    throw new IllegalStateException(problems.toString());
                });
        List<double[]> points = new ArrayList<>();
        session.inputs().map(r -> r.input()).forEach(input -> {
            if (input instanceof Sample s && s.probe().equals(session.header().setup().bowlProbe().id()))
                points.add(new double[] {
                    Duration.between(session.header().start(), s.at()).toNanos() / 1e9, s.tipCelsius()
                });
        });
        double[] curve = new double[(int) (points.get(points.size() - 1)[0] * HERTZ)];
        int point = 0;
        for (int i = 0; i < curve.length; i++) {
            double t = i / (double) HERTZ;
            while (point + 2 < points.size() && points.get(point + 1)[0] < t) point++;
            double[] a = points.get(point);
            double[] b = points.get(point + 1);
            double share = Math.max(0, Math.min(1, (t - a[0]) / (b[0] - a[0])));
            curve[i] = a[1] + share * (b[1] - a[1]);
        }
        return curve;
    }

    @Override
    public Origin origin() {
        return Origin.SIMULATED;
    }

    @Override
    public List<ProbeSetup> probes() {
        return List.of(Setups.probe(Setups.BOWL, Role.BOWL, Protocols.TEXT, "bench"));
    }

    @Override
    public Wiring wire(SessionClock clock, Consumer<Input> hands) throws Refusal {
        SessionListener taken = (snapshot, events) -> {
            if (room.availablePermits() < AHEAD) room.release();
        };
        ProbeLine line = new ProbeLine(
                "bowl",
                source(clock),
                Protocols.named(Protocols.TEXT).protocol(),
                Map.of(ProbeLine.FIRST_TO_SPEAK, Setups.BOWL));
        KeyDesk.Speed none = new KeyDesk.Speed() {
            @Override
            public void faster() {}

            @Override
            public void slower() {}
        };
        Ticking ticking = pace == Pace.LIFE ? Ticking.BY_THE_CLOCK : Ticking.BY_THE_DATA;
        return new Wiring(List.of(line), List.of(taken), none, ticking);
    }

    private LinkSource source(SessionClock clock) {
        Instant start = clock.instant();
        return new LinkSource() {
            @Override
            public String place() {
                return "bench";
            }

            @Override
            public ByteLink open() {
                return new Lines(clock, start);
            }
        };
    }

    private final class Lines implements ByteLink {
        private final SessionClock clock;
        private final Instant start;
        private int next;

        Lines(SessionClock clock, Instant start) {
            this.clock = clock;
            this.start = start;
        }

        @Override
        public Optional<Arrival> read() throws InterruptedException {
            if (next == lines) return Optional.empty();
            Instant at = start.plus(PERIOD.multipliedBy(next + 1L));
            if (pace == Pace.LIFE) {
                clock.waitUntil(at);
                at = clock.instant();
            } else {
                room.acquire();
            }
            byte[] bytes = String.format(Locale.ROOT, "T: %.2f C\n", curve[next++ % curve.length])
                    .getBytes(StandardCharsets.US_ASCII);
            arrived.accept(at, System.nanoTime());
            return Optional.of(new Arrival(at, bytes));
        }

        @Override
        public void write(byte[] bytes) {}

        @Override
        public void close() {}
    }
}
