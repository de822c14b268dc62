package fifthform.probe.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.protocol.TextLines;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Stories told to a reader; times are seconds after the start, by a clock that only the story moves. */
class ProbeReaderTest {
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");
    private static final ProbeId BOWL = new ProbeId("bowl");
    private static final ProbeId BATH = new ProbeId("bath");

    private final HandMovedClock clock = new HandMovedClock(START);
    private final ScriptedSource port = new ScriptedSource(clock);

    @Test
    void readingsCarryTheTimeOfTheirArrival() throws Exception {
        port.text("31.25\n").text("31.50\n").silence(Duration.ofMillis(400)).text("31.75\n");
        // The first line waits for the second: a link may begin in the middle of a line.
        assertEquals(List.of("0.4 31.25", "0.4 31.5", "1.0 31.75"), told(play(Map.of(0, BOWL))));
    }

    @Test
    void theResolutionBecomesTheUncertainty() throws Exception {
        port.text("\n31.2\n31.2500000\n");
        List<Input> inputs = play(Map.of(0, BOWL));
        assertEquals(0.1 / Math.sqrt(12), ((Sample) inputs.get(0)).sigmaKelvin(), 1e-12);
        assertEquals(0.001, ((Sample) inputs.get(1)).sigmaKelvin());
    }

    @Test
    void channelsGoToTheirProbesAndOthersNowhere() throws Exception {
        port.text("\nT1:31.25 T2:41.00 T3:20.00\n");
        List<Input> inputs = play(Map.of(1, BOWL, 2, BATH));
        assertEquals(List.of("0.2 31.25", "0.2 41.0"), told(inputs));
        assertEquals(BATH, ((Sample) inputs.get(1)).probe());
    }

    @Test
    void whicheverChannelSpeaksFirstMayBeTheProbes() throws Exception {
        port.text("\nT1:31.25 T2:41.00\nT1:31.50 T2:41.00\n");
        List<Input> inputs = play(Map.of(ProbeLine.FIRST_TO_SPEAK, BOWL));
        assertEquals(List.of("0.2 31.25", "0.2 31.5"), told(inputs));
    }

    @Test
    void faultsAreToldAsTheyCome() throws Exception {
        port.text("nan\nfault short\n2000.00\n");
        assertEquals(List.of("0.2 OPEN_CIRCUIT", "0.2 SHORT_CIRCUIT", "0.2 OUT_OF_RANGE"), told(play(Map.of(0, BOWL))));
    }

    @Test
    void noiseIsToldOnceASecond() throws Exception {
        for (int i = 0; i < 12; i++) port.text("?!\n");
        assertEquals(List.of("0.2 GARBLED", "1.2 GARBLED", "2.2 GARBLED"), told(play(Map.of(0, BOWL))));
    }

    @Test
    void silenceIsToldAfterTwoSecondsAndEveryTwo() throws Exception {
        port.text("\n31.25\n").silence(Duration.ofSeconds(5)).text("31.50\n");
        assertEquals(List.of("0.2 31.25", "2.2 SILENT", "4.2 SILENT", "5.4 31.5"), told(play(Map.of(0, BOWL))));
    }

    @Test
    void aPortThatNeverSpeaksIsSilent() throws Exception {
        port.silence(Duration.ofSeconds(3));
        assertEquals(List.of("2.2 SILENT"), told(play(Map.of(0, BOWL))));
    }

    @Test
    void oneSilentChannelIsToldWhileTheOtherSpeaks() throws Exception {
        port.text("\nT1:31.25 T2:41.00\n");
        for (int i = 0; i < 11; i++) port.text("T1:31.25\n");
        List<Input> faults = play(Map.of(1, BOWL, 2, BATH)).stream()
                .filter(ProbeFault.class::isInstance)
                .toList();
        assertEquals(List.of(new ProbeFault(START.plusMillis(2200), BATH, ProbeFault.Cause.SILENT)), faults);
    }

    @Test
    void anUnpluggedAdapterIsLookedForAgainWithGrowingPauses() throws Exception {
        port.text("\n31.25\n").gone().cannotBeOpened(4).text("\n31.50\n").gone().text("\n31.75\n");
        List<Input> inputs = play(Map.of(0, BOWL));
        assertEquals(
                List.of(
                        "0.2 31.25",
                        "0.2 UNPLUGGED",
                        "3.7 UNPLUGGED",
                        "5.7 UNPLUGGED",
                        "7.9 31.5",
                        "7.9 UNPLUGGED",
                        "8.6 31.75"),
                told(inputs));
        assertEquals(
                List.of(500L, 1000L, 2000L, 2000L, 2000L, 500L),
                clock.pauses().stream().map(Duration::toMillis).toList());
        assertEquals(3, port.opened);
        assertEquals(3, port.closed, "every link is closed");
    }

    /** The half line before a loss and the half line after it must not become one number. */
    @Test
    void aNewLinkGetsANewDecoder() throws Exception {
        port.text("\n3").gone().text("1.25\n").text("31.50\n");
        assertEquals(List.of("0.2 UNPLUGGED", "1.1 GARBLED", "1.1 31.5"), told(play(Map.of(0, BOWL))));
    }

    /** 5000 lines a second for twelve seconds. */
    @Test
    void aFloodIsThinnedToItsNewestAndToldEveryFiveSeconds() throws Exception {
        for (int arrival = 0; arrival < 60; arrival++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < 1000; i++) text.append(String.format(Locale.ROOT, "%.3f\n", 30 + arrival + i / 1000.0));
            port.text(text.toString());
        }
        port.silence(Duration.ofSeconds(1)).text("91.000\n");
        List<Input> inputs = play(Map.of(0, BOWL));
        List<Double> tips = inputs.stream()
                .filter(Sample.class::isInstance)
                .map(input -> ((Sample) input).tipCelsius())
                .toList();
        assertTrue(tips.size() <= 20 + 20 * 12 + 1, tips.size() + " readings in 12 s");
        assertTrue(tips.contains(50.999) && !tips.contains(50.5), "the newest of each arrival");
        assertEquals(91.0, tips.get(tips.size() - 1), "after the flood all is as before");
        assertEquals(
                List.of("0.2 FLOODED", "5.2 FLOODED", "10.2 FLOODED"),
                told(inputs).stream().filter(line -> line.contains("FLOODED")).toList());
    }

    @Test
    void twentyASecondAreNoFlood() throws Exception {
        port.text("\n");
        for (int i = 0; i < 300; i++) port.text("31.25\n31.26\n31.27\n31.28\n");
        List<Input> inputs = play(Map.of(0, BOWL));
        assertEquals(1200, inputs.size());
        assertTrue(inputs.stream().allMatch(Sample.class::isInstance));
    }

    /** Whether a value that never changes can be right is for the engine to judge; the reader hides nothing. */
    @Test
    void whatRepeatsIsHandedOnEachTime() throws Exception {
        port.text("\n31.25\n").text("31.25\n").text("31.25\n");
        assertEquals(List.of("0.2 31.25", "0.4 31.25", "0.6 31.25"), told(play(Map.of(0, BOWL))));
    }

    /** A board counts milliseconds by a clock of its own that runs three times too fast, and stops. */
    @Test
    void theDevicesOwnTimeIsNeverBelieved() throws Exception {
        port.text("\n600000,31.25\n")
                .text("600600,31.26\n")
                .text("601200,31.27\n")
                .text("601200,31.28\n");
        List<String> told = told(play(Map.of(0, BOWL)));
        assertEquals(List.of("0.6 31.27", "0.8 31.28"), told.subList(told.size() - 2, told.size()));
    }

    @Test
    void aReleasedPortIsFreeUntilItIsTakenBack() throws Exception {
        BlockingQueue<String> story = new LinkedBlockingQueue<>();
        BlockingQueue<Input> inputs = new LinkedBlockingQueue<>();
        LinkSource speaking = source(() -> {
            story.add("opened");
            return new FakeLink() {
                @Override
                public Optional<Arrival> read() throws LinkException, InterruptedException {
                    if (story.contains("closed")) throw new LinkException("fake", "closed under us", "wait");
                    Thread.sleep(5);
                    clock.advance(Duration.ofMillis(200));
                    return Optional.of(new Arrival(clock.instant(), "\n31.25\n".getBytes()));
                }

                @Override
                public void close() {
                    story.add("closed");
                }
            };
        });
        ProbeReader reader = new ProbeReader(
                new ProbeLine("bowl", speaking, new TextLines(), Map.of(0, BOWL)), clock, inputs::add, () -> {});
        reader.start();
        while (!(inputs.take() instanceof Sample)) {}
        reader.release();
        assertTrue(reader.isReleased());
        assertEquals("opened", story.poll());
        assertEquals("closed", story.poll());
        Input told = inputs.take();
        while (told instanceof Sample) told = inputs.take();
        assertEquals(ProbeFault.Cause.UNPLUGGED, ((ProbeFault) told).cause());
        assertTrue(inputs.take() instanceof ProbeFault, "and it stays so");
        String why = reader.trouble().map(Exception::getMessage).orElse("");
        assertTrue(why.contains("released on request"), why);
        story.removeIf("closed"::equals);
        assertEquals(List.of(), List.copyOf(story), "nobody opens it meanwhile");

        reader.takeBack();
        while (!(inputs.take() instanceof Sample)) {}
        assertTrue(reader.trouble().isEmpty() && reader.isReading());
        reader.stop();
    }

    @Test
    void timesNeverGoBack() throws Exception {
        LinkSource jumping = new LinkSource() {
            private int read;

            @Override
            public String place() {
                return "jumping";
            }

            @Override
            public ByteLink open() {
                return new FakeLink() {
                    @Override
                    public Optional<Arrival> read() {
                        if (++read > 6) return Optional.empty();
                        Instant at = START.plusSeconds(read % 2 == 0 ? -read : read);
                        return Optional.of(new Arrival(at, "\n31.25\n".getBytes()));
                    }
                };
            }
        };
        List<Input> inputs = play(jumping, Map.of(0, BOWL));
        for (int i = 1; i < inputs.size(); i++)
            assertFalse(inputs.get(i).at().isBefore(inputs.get(i - 1).at()), inputs::toString);
    }

    @Test
    void stoppingClosesTheLinkAndEndsTheThread() throws Exception {
        CountDownLatch reading = new CountDownLatch(1);
        BlockingQueue<String> closed = new LinkedBlockingQueue<>();
        LinkSource waiting = source(() -> new FakeLink() {
            @Override
            public Optional<Arrival> read() throws InterruptedException {
                reading.countDown();
                new CountDownLatch(1).await();
                return Optional.empty();
            }

            @Override
            public void close() {
                closed.add("closed");
            }
        });
        List<Input> inputs = Collections.synchronizedList(new ArrayList<>());
        ProbeReader reader = reader(waiting, Map.of(0, BOWL), inputs, () -> closed.add("ended"));
        reader.start();
        assertTrue(reading.await(10, TimeUnit.SECONDS));
        reader.stop();
        assertEquals("closed", closed.poll());
        assertFalse(closed.contains("ended"), "a stop is not the end of a recording");
        assertTrue(Thread.getAllStackTraces().keySet().stream()
                .noneMatch(t -> t.getName().equals("probe-bowl")));
        assertEquals(List.of(), inputs, "being stopped is no fault of the probe");
    }

    @Test
    void aFaultOfTheProgramIsToldLikeALossAndTriedAgain() throws Exception {
        CountDownLatch told = new CountDownLatch(3);
        LinkSource buggy = source(() -> {
            throw new IllegalStateException("a bug");
        });
        ProbeReader reader = new ProbeReader(
                new ProbeLine("bowl", buggy, new TextLines(), Map.of(0, BOWL)), clock, i -> told.countDown(), () -> {});
        reader.start();
        assertTrue(told.await(10, TimeUnit.SECONDS));
        String why = reader.trouble().map(Exception::getMessage).orElse("works");
        assertTrue(why.contains("a bug"), why);
        reader.stop();
    }

    @Test
    void whyTheLinkIsNotOpenCanBeAsked() throws Exception {
        CountDownLatch told = new CountDownLatch(3);
        LinkSource closedPort = source(() -> {
            throw new LinkException("ttyUSB0", "held", "close it");
        });
        ProbeReader reader = new ProbeReader(
                new ProbeLine("bowl", closedPort, new TextLines(), Map.of(0, BOWL)),
                clock,
                i -> told.countDown(),
                () -> {});
        reader.start();
        assertTrue(told.await(10, TimeUnit.SECONDS));
        assertEquals("held", reader.trouble().map(Exception::getMessage).orElse("works"));
        reader.stop();
    }

    private List<Input> play(Map<Integer, ProbeId> probes) throws InterruptedException {
        return play(port, probes);
    }

    /** Runs the whole script on the reader's own thread. */
    private List<Input> play(LinkSource source, Map<Integer, ProbeId> probes) throws InterruptedException {
        List<Input> inputs = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch ended = new CountDownLatch(1);
        ProbeReader reader = reader(source, probes, inputs, ended::countDown);
        reader.start();
        assertTrue(ended.await(10, TimeUnit.SECONDS), "the recording's end is told");
        reader.stop();
        return inputs;
    }

    private ProbeReader reader(LinkSource source, Map<Integer, ProbeId> probes, List<Input> inputs, Runnable onEnd) {
        return new ProbeReader(new ProbeLine("bowl", source, new TextLines(), probes), clock, inputs::add, onEnd);
    }

    private static List<String> told(List<Input> inputs) {
        return inputs.stream()
                .map(input -> Duration.between(START, input.at()).toMillis() / 1000.0 + " "
                        + (input instanceof Sample s ? s.tipCelsius() : ((ProbeFault) input).cause()))
                .toList();
    }

    private interface Opening {
        ByteLink open() throws LinkException;
    }

    private static LinkSource source(Opening opening) {
        return new LinkSource() {
            @Override
            public String place() {
                return "fake";
            }

            @Override
            public ByteLink open() throws LinkException {
                return opening.open();
            }
        };
    }

    /** A link that takes what it is sent and closes without a word. */
    private abstract static class FakeLink implements ByteLink {
        @Override
        public void write(byte[] bytes) {}

        @Override
        public void close() {}
    }
}
