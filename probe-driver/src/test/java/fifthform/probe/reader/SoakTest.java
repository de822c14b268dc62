package fifthform.probe.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.LineSettings;
import fifthform.probe.link.PseudoTerminals;
import fifthform.probe.link.SerialSource;
import fifthform.probe.protocol.TextLines;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * An adapter that is pulled in the middle of a line and comes back under another number, again and again:
 * {@code -Dsoak.rounds=N}. What it takes is printed; the bound that is held is a generous one.
 */
@Timeout(1800)
class SoakTest {
    private static final int ROUNDS = Integer.getInteger("soak.rounds", 50);
    private static final long LONGEST_MILLIS = 20_000;

    @TempDir
    Path folder;

    private final BlockingQueue<Input> inputs = new LinkedBlockingQueue<>();
    private final Set<Double> sent = ConcurrentHashMap.newKeySet();
    private int number;

    @Test
    void everyTimeItComesBackAndNothingIsLeftBehind() throws Exception {
        PseudoTerminals.require("socat");
        List<Long> millis = new ArrayList<>();
        int moved = 0;
        int readings = 0;
        long descriptors = 0;
        long threads = 0;
        try (PseudoTerminals pair = new PseudoTerminals(folder);
                PseudoTerminals decoy = new PseudoTerminals(Files.createDirectory(folder.resolve("decoy")));
                ProbeReader reader = reader(pair.near())) {
            reader.start();
            Path before = folder;
            for (int round = 0; round <= ROUNDS; round++) {
                if (round == 1) descriptors = count("fd");
                if (round == 1) threads = threads();
                if (round % 2 == 0) decoy.connect(); // takes the numbers that have become free
                else decoy.endAll();
                pair.connect();
                Path device = Path.of(pair.near()).toRealPath();
                if (!device.equals(before)) moved++;
                before = device;
                long back = System.nanoTime();
                try (OutputStream wire = new FileOutputStream(pair.far())) {
                    write(wire, "1.25 C\r\n"); // the rear half of a line that nobody saw begin
                    readings += speakUntilHeard(wire, round);
                    millis.add((System.nanoTime() - back) / 1_000_000);
                    write(wire, "T: 9"); // half a line at the cut
                }
                pair.endAll();
                awaitUnplugged(round);
            }
            decoy.endAll();
            long after = count("fd");
            assertTrue(after <= descriptors + 2, () -> descriptorsText(after));
            assertTrue(threads() <= threads, "threads: " + threads());
        }
        assertEquals(0, probeThreads());
        Collections.sort(millis);
        System.out.printf(
                Locale.ROOT,
                "soak: %d rounds, %d under another number, %d readings, none false; back after %d ms in the middle, %d ms"
                        + " at most; descriptors and threads as at first%n",
                ROUNDS,
                moved,
                readings,
                millis.get(millis.size() / 2),
                millis.get(millis.size() - 1));
        assertTrue(millis.get(millis.size() - 1) < LONGEST_MILLIS, millis::toString);
    }

    /** One line each 60 ms until one was heard; how many were heard. */
    private int speakUntilHeard(OutputStream wire, int round) throws Exception {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(LONGEST_MILLIS);
        while (System.nanoTime() < end) {
            double celsius = (3000 + number++ % 1500) / 100.0;
            sent.add(celsius);
            write(wire, String.format(Locale.ROOT, "T: %.2f C\r\n", celsius));
            Input input = inputs.poll(60, TimeUnit.MILLISECONDS);
            int heard = 0;
            for (; input != null; input = inputs.poll()) if (isTrue(input)) heard++;
            if (heard > 0) return heard;
        }
        throw new AssertionError("round " + round + ": not heard again");
    }

    private boolean isTrue(Input input) {
        if (!(input instanceof Sample sample)) return false;
        assertTrue(sent.contains(sample.tipCelsius()), () -> "nobody said " + sample);
        return true;
    }

    private void awaitUnplugged(int round) throws InterruptedException {
        Input input = inputs.poll(LONGEST_MILLIS, TimeUnit.MILLISECONDS);
        while (input != null && !isUnplugged(input)) {
            isTrue(input);
            input = inputs.poll(LONGEST_MILLIS, TimeUnit.MILLISECONDS);
        }
        assertTrue(input != null, "round " + round + ": the loss was not told");
        sent.clear(); // nothing that was said before the cut may be heard after it
    }

    private static boolean isUnplugged(Input input) {
        return input instanceof ProbeFault fault && fault.cause() == ProbeFault.Cause.UNPLUGGED;
    }

    private static void write(OutputStream wire, String text) throws IOException {
        wire.write(text.getBytes(StandardCharsets.US_ASCII));
    }

    private ProbeReader reader(String port) {
        RealTime clock = new RealTime();
        ProbeLine line = new ProbeLine(
                "soak",
                new SerialSource(port, new LineSettings(9600), clock),
                new TextLines(),
                Map.of(0, new ProbeId("bowl")));
        return new ProbeReader(line, clock, inputs::add, () -> {});
    }

    private static long count(String what) throws IOException {
        try (Stream<Path> entries = Files.list(Path.of("/proc/self", what))) {
            return entries.count();
        }
    }

    private static String descriptorsText(long count) {
        return count + " descriptors are open";
    }

    /** Without those that Java keeps for a minute for each program that has ended. */
    private static long threads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> !thread.getName().startsWith("process reaper"))
                .count();
    }

    private static long probeThreads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("probe-soak"))
                .count();
    }

    /** The real time, as a session has it. */
    private static final class RealTime implements ReaderClock {
        @Override
        public Instant instant() {
            return Instant.now();
        }

        @Override
        public void pause(Duration duration) throws InterruptedException {
            Thread.sleep(duration.toMillis());
        }
    }
}
