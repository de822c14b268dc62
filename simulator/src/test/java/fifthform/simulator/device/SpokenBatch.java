package fifthform.simulator.device;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.ProbeProtocol.Manner;
import fifthform.probe.Talk;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.reader.ProbeLine;
import fifthform.probe.reader.ProbeReader;
import fifthform.probe.reader.ReaderClock;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.ScenarioText;
import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The first minutes of a batch, heard by the reader that serves real ports, with the truth beside it. */
final class SpokenBatch {
    static final Instant START = Instant.parse("2026-01-10T09:00:00Z");
    static final ProbeId BOWL = new ProbeId("bowl");
    private static final String TEXT = """
            demo = invented for a test
            title = A test
            about = Nothing much.
            chocolate = dark
            bowl = steel
            maker = own-way
            junction = 26 C
            """;

    private final List<Input> inputs = new CopyOnWriteArrayList<>();
    private final TreeMap<Instant, Double> truth = new TreeMap<>();
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final Language language;

    private SpokenBatch(Language language) {
        this.language = language;
    }

    static Scenario scenario(Talk talk, String... more) {
        String text = TEXT + "adapter = " + talk + "\n" + String.join("\n", more);
        return Tongues.accepted(ScenarioText.parse("test", text));
    }

    /** Listens until the kitchen is this far. */
    static SpokenBatch heard(Duration length, Talk talk, String... more) throws InterruptedException {
        Scenario scenario = scenario(talk, more);
        SpokenBatch batch = new SpokenBatch(scenario.bowlAdapter().language());
        batch.listen(scenario.start(START), START.plus(length));
        return batch;
    }

    private void listen(RunningKitchen kitchen, Instant end) throws InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        LinkSource until = new Overheard(kitchen, end);
        ProbeLine line = new ProbeLine("bowl", until, language.protocol(), Map.of(0, BOWL));
        try (ProbeReader reader = new ProbeReader(line, new KitchenTime(kitchen), inputs::add, ended::countDown)) {
            reader.start();
            if (!ended.await(60, TimeUnit.SECONDS)) throw new AssertionError("the line did not end");
        }
    }

    List<Input> inputs() {
        return inputs;
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }

    Language language() {
        return language;
    }

    /** What the program makes of each reading from this second on, before the other. */
    Stream<Sample> samples(long fromSecond, long toSecond) {
        return inputs.stream()
                .filter(input -> within(input, fromSecond, toSecond))
                .filter(Sample.class::isInstance)
                .map(Sample.class::cast);
    }

    List<ProbeFault.Cause> causes(long fromSecond, long toSecond) {
        return inputs.stream()
                .filter(input -> within(input, fromSecond, toSecond))
                .filter(ProbeFault.class::isInstance)
                .map(input -> ((ProbeFault) input).cause())
                .distinct()
                .toList();
    }

    private static boolean within(Input input, long fromSecond, long toSecond) {
        return !input.at().isBefore(START.plusSeconds(fromSecond)) && input.at().isBefore(START.plusSeconds(toSecond));
    }

    /**
     * How far a reading lies from what the tip was when it may have been taken, K: a polled one is a little old, and a binary
     * frame is believed when the next one has shown where it ends.
     */
    double offKelvin(Sample sample) {
        double tip = language.protocol()
                .sensor()
                .tipCelsius(sample.tipCelsius(), sample.junctionCelsius(), sample.emfMillivolts());
        boolean asked = language.protocol().manner() == Manner.ANSWERS;
        Duration old = isBinary() ? Duration.ofMillis(2500) : asked ? Duration.ofMillis(750) : Duration.ZERO;
        return truth.subMap(sample.at().minus(old), true, sample.at(), true).values().stream()
                .mapToDouble(then -> Math.abs(then - tip))
                .min()
                .orElseThrow();
    }

    private boolean isBinary() {
        return language.talk().settings().getOrDefault("form", "").equals("binary");
    }

    /** From when on it can be heard at all: without a mark nobody tells where a frame begins before its bits have moved. */
    long clearFromSecond() {
        return isBinary() && !language.talk().settings().containsKey("sync") ? 240 : 3;
    }

    /** Waiting lets the kitchen's time pass. */
    private record KitchenTime(RunningKitchen kitchen) implements ReaderClock {
        @Override
        public Instant instant() {
            return kitchen.now();
        }

        @Override
        public void pause(Duration duration) {
            kitchen.advanceTo(kitchen.now().plus(duration));
        }
    }

    /** Keeps what really was, and the bytes, and ends in time. Used by the reader's thread only. */
    private final class Overheard implements LinkSource {
        private final RunningKitchen kitchen;
        private final Instant end;

        Overheard(RunningKitchen kitchen, Instant end) {
            this.kitchen = kitchen;
            this.end = end;
        }

        @Override
        public String place() {
            return "test";
        }

        @Override
        public ByteLink open() throws LinkException {
            ByteLink line = kitchen.bowlSource().open();
            return new ByteLink() {
                @Override
                public Optional<Arrival> read() throws LinkException, InterruptedException {
                    if (kitchen.now().isAfter(end)) return Optional.empty();
                    Optional<Arrival> arrival = line.read();
                    truth.put(kitchen.now(), kitchen.state().tipCelsius());
                    arrival.ifPresent(came -> bytes.writeBytes(came.bytes()));
                    return arrival;
                }

                @Override
                public void write(byte[] question) throws LinkException {
                    line.write(question);
                }

                @Override
                public void close() {
                    line.close();
                }
            };
        }
    }
}
