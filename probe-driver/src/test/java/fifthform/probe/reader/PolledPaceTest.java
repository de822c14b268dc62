package fifthform.probe.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Spoken;
import fifthform.probe.Talk;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.probe.link.TapeSource;
import fifthform.probe.protocol.ModbusRtu;
import fifthform.probe.protocol.Scpi;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How often a reader asks, and looks, by a link that keeps the serial port's times on a clock moved by hand. */
class PolledPaceTest {
    private static final Instant START = Instant.parse("2026-03-01T10:00:00Z");
    /** Unit 1, register 8, 31.5 °C: from {@code modbus_rtu_frames.csv}. */
    private static final byte[] ANSWER = HexFormat.ofDelimiter(" ").parseHex("01 04 02 01 3B F9 73");

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final HandMovedClock clock = new HandMovedClock(START);
    private final List<Input> inputs = Collections.synchronizedList(new ArrayList<>());

    /** As long as answer and quiet line fit into the interval. */
    @Test
    void theIntervalHoldsOnAverageWhateverTheDeviceTakes() throws Exception {
        for (int delayMillis : new int[] {5, 30, 150, 199, 230, 290}) {
            AnsweringPort port = new AnsweringPort(delayMillis, MINUTE);
            read(port, "modbus-rtu:register=8,every=0.5");
            assertEquals(0.5, port.meanSeconds(), 0.01, "with answers after " + delayMillis + " ms");
            assertTrue(port.longestMillis() <= 500 + 2 * 200, "gap of " + port.longestMillis() + " ms");
        }
    }

    @Test
    void theShortestIntervalHoldsToo() throws Exception {
        AnsweringPort port = new AnsweringPort(5, MINUTE);
        read(port, "modbus-rtu:register=8,every=0.25");
        assertEquals(0.25, port.meanSeconds(), 0.01);
        assertTrue(port.reads <= 10 * 60, port.reads + " looks in a minute");
    }

    @Test
    void lookingIsNotDoneInALoop() throws Exception {
        AnsweringPort port = new AnsweringPort(30, MINUTE);
        read(port, "modbus-rtu:register=8,every=0.5");
        assertTrue(port.reads <= 7 * 60, port.reads + " looks in a minute");
        assertEquals(port.asked.size(), samples(), 1);
    }

    @Test
    void eachQuestionGoesIntoAQuietLine() throws Exception {
        AnsweringPort port = new AnsweringPort(260, MINUTE);
        read(port, "modbus-rtu:register=8,every=0.25,timeout=1");
        for (int i = 1; i < port.asked.size(); i++) {
            Duration since = Duration.between(port.asked.get(i - 1), port.asked.get(i));
            assertTrue(since.toMillis() >= 260 + 200, "asked again after " + since);
        }
    }

    @Test
    void aDeviceThatDoesNotAnswerIsSilent() throws Exception {
        AnsweringPort port = new AnsweringPort(AnsweringPort.NEVER, Duration.ofSeconds(10));
        read(port, "modbus-rtu:register=8");
        assertTrue(inputs.size() >= 4, inputs::toString);
        assertTrue(inputs.stream()
                .allMatch(input -> input instanceof ProbeFault f && f.cause() == ProbeFault.Cause.SILENT));
        assertTrue(port.asked.size() >= 12, "it is asked on: " + port.asked.size());
    }

    /** A recording answers to questions that were put at other times. */
    @Test
    void aRecordingOfAPolledDeviceMeansTheSame(@TempDir Path folder) throws Exception {
        StringBuilder tape = new StringBuilder();
        for (int i = 0; i < 40; i++)
            tape.append(String.format("%.3f 010402%n", 0.1 + i * 0.77))
                    .append(String.format("%.3f 013bf973%n", 0.13 + i * 0.77));
        Path file = folder.resolve("polled.bytes");
        Files.writeString(file, tape.toString());
        read(tape(file), "modbus-rtu:register=8");
        assertEquals(40, samples(), inputs::toString);

        Path lines = folder.resolve("instrument.bytes");
        StringBuilder said = new StringBuilder("0.2 " + hex("Demo,DT-2,1,1.0\r\n") + "\n0.5 " + hex("F\r\n") + "\n");
        for (int i = 0; i < 40; i++) said.append(String.format("%.3f %s%n", 1 + i * 0.6, hex("+8.870E+01\r\n")));
        Files.writeString(lines, said.toString());
        inputs.clear();
        read(tape(lines), "scpi");
        assertEquals(40, samples(), inputs::toString);
        assertTrue(inputs.stream().allMatch(input -> input instanceof Sample s && s.tipCelsius() == 31.5));
    }

    @Test
    void nothingIsSentAfterStop() throws Exception {
        AnsweringPort port = new AnsweringPort(5, Duration.ofDays(1));
        ProbeReader reader = reader(port, "modbus-rtu:register=8", () -> {});
        reader.start();
        while (port.reads < 1000) Thread.onSpinWait();
        reader.stop();
        int asked = port.asked.size();
        Thread.sleep(50);
        assertEquals(asked, port.asked.size());
        assertTrue(port.closed);
        assertEquals(0, port.writtenAfterClose);
    }

    private static LinkSource tape(Path file) {
        return TapeSource.read(file, START, Duration.ofSeconds(1)).fold(source -> source, problems -> {
            throw new AssertionError(problems.toString());
        });
    }

    private static String hex(String text) {
        return HexFormat.of().formatHex(text.getBytes(StandardCharsets.US_ASCII));
    }

    private long samples() {
        return inputs.stream().filter(Sample.class::isInstance).count();
    }

    private void read(LinkSource source, String talk) throws InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        ProbeReader reader = reader(source, talk, ended::countDown);
        reader.start();
        assertTrue(ended.await(20, TimeUnit.SECONDS));
        reader.stop();
    }

    private ProbeReader reader(LinkSource source, String talk, Runnable onEnd) {
        List<ProbeProtocol> known = List.of(new ModbusRtu(), new Scpi());
        Spoken spoken = Talk.parse(talk)
                .fold(t -> Spoken.of(t, known), PolledPaceTest::refused)
                .fold(s -> s, PolledPaceTest::refused);
        ProbeLine line = new ProbeLine("bowl", source, spoken.protocol(), Map.of(0, new ProbeId("bowl")));
        return new ProbeReader(line, clock, inputs::add, onEnd);
    }

    private static <R> R refused(Object problems) {
        throw new AssertionError(problems.toString());
    }

    /** A port whose device answers each question after some time; a read comes back at once with it, or after 200 ms. */
    private final class AnsweringPort implements LinkSource, ByteLink {
        private static final int NEVER = -1;
        private static final Duration READ_TIMEOUT = Duration.ofMillis(200);

        private final int delayMillis;
        private final Instant end;
        private final List<Instant> asked = Collections.synchronizedList(new ArrayList<>());
        private Optional<Instant> answerAt = Optional.empty();
        private volatile int reads;
        private volatile boolean closed;
        private volatile int writtenAfterClose;

        AnsweringPort(int delayMillis, Duration lasting) {
            this.delayMillis = delayMillis;
            this.end = clock.instant().plus(lasting);
        }

        @Override
        public String place() {
            return "answering";
        }

        @Override
        public ByteLink open() {
            return this;
        }

        @Override
        public Optional<Arrival> read() throws LinkException {
            reads++;
            if (closed) throw new LinkException(place(), "closed", "open");
            if (!clock.instant().isBefore(end)) return Optional.empty();
            Instant silentUntil = clock.instant().plus(READ_TIMEOUT);
            if (answerAt.filter(at -> at.isBefore(silentUntil)).isEmpty()) {
                clock.advance(READ_TIMEOUT);
                return Optional.of(Arrival.silence(clock.instant()));
            }
            clock.advance(Duration.between(clock.instant(), answerAt.get()));
            answerAt = Optional.empty();
            return Optional.of(new Arrival(clock.instant(), ANSWER.clone()));
        }

        @Override
        public void write(byte[] bytes) {
            if (closed) writtenAfterClose++;
            asked.add(clock.instant());
            if (delayMillis != NEVER) answerAt = Optional.of(clock.instant().plusMillis(delayMillis));
        }

        @Override
        public void close() {
            closed = true;
        }

        double meanSeconds() {
            Duration all = Duration.between(asked.get(0), asked.get(asked.size() - 1));
            return all.toMillis() / 1000.0 / (asked.size() - 1);
        }

        long longestMillis() {
            long longest = 0;
            for (int i = 1; i < asked.size(); i++)
                longest = Math.max(
                        longest,
                        Duration.between(asked.get(i - 1), asked.get(i)).toMillis());
            return longest;
        }
    }
}
