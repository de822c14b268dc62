package fifthform.probe.reader;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.LineSettings;
import fifthform.probe.link.PseudoTerminals;
import fifthform.probe.link.SerialSource;
import fifthform.probe.protocol.TextLines;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * How often the reader's thread wakes while lines trickle in byte by byte, as the kernel counts it: a thread that waits
 * switches voluntarily ({@code /proc/self/task/N/status}, proc(5)).
 */
@Timeout(120)
class WakesTest {
    private static final int LINES = 60;
    /** Each byte one millisecond after the other, as at 9600 bit/s, ten lines a second. */
    private static final int BYTE_MILLIS = 1;

    /** At ten a second that makes twenty. */
    private static final double MOST_WAKES_A_READING = 2.0;

    @TempDir
    Path folder;

    /** No list: waiting for its lock would be counted. */
    private final AtomicInteger readings = new AtomicInteger();

    @Test
    void aReadingWakesTheReaderTwiceAtMostHoweverSlowlyItsBytesCome() throws Exception {
        PseudoTerminals.require("socat", "python3");
        Path script = folder.resolve("trickle.py");
        try (InputStream in = WakesTest.class.getResourceAsStream("/serial/trickle.py")) {
            Files.copy(in, script);
        }
        try (PseudoTerminals pair = new PseudoTerminals(folder)) {
            pair.connect();
            try (ProbeReader reader = reader(pair.near())) {
                reader.start();
                while (!reader.isReading()) Thread.sleep(10);
                pair.start(
                        "python3", script.toString(), pair.far(), String.valueOf(LINES + 20), "100", "" + BYTE_MILLIS);
                awaitReadings(10);
                long wakes = wakes();
                int heard = readings.get();
                awaitReadings(heard + LINES);
                int more = readings.get() - heard;
                double each = (double) (wakes() - wakes) / more;
                System.out.printf(
                        Locale.ROOT,
                        "wakes: %.2f a reading, %.1f a second at 10 Hz, in %d readings%n",
                        each,
                        10 * each,
                        more);
                assertTrue(each <= MOST_WAKES_A_READING, each + " wakes a reading");
            }
        }
    }

    private static long wakes() throws Exception {
        for (Path task : tasks()) {
            // Linux keeps 15 letters of a thread's name.
            if (!Files.readString(task.resolve("comm")).strip().equals("probe-wakes")) continue;
            return Files.readAllLines(task.resolve("status")).stream()
                    .filter(line -> line.startsWith("voluntary_ctxt_switches"))
                    .mapToLong(line -> Long.parseLong(line.split("\\s+")[1]))
                    .findFirst()
                    .orElseThrow();
        }
        assumeTrue(false, "this system does not show its threads by name");
        return 0;
    }

    private static List<Path> tasks() throws Exception {
        try (var tasks = Files.list(Path.of("/proc/self/task"))) {
            return tasks.toList();
        }
    }

    private ProbeReader reader(String port) {
        ReaderClock clock = new ReaderClock() {
            @Override
            public Instant instant() {
                return Instant.now();
            }

            @Override
            public void pause(Duration duration) throws InterruptedException {
                Thread.sleep(duration.toMillis());
            }
        };
        ProbeLine line = new ProbeLine(
                "wakes",
                new SerialSource(port, new LineSettings(9600), clock),
                new TextLines(),
                Map.of(0, new ProbeId("bowl")));
        return new ProbeReader(line, clock, this::count, () -> {});
    }

    private void count(Input input) {
        if (input instanceof Sample) readings.incrementAndGet();
    }

    private void awaitReadings(int count) throws InterruptedException {
        for (int i = 0; i < 3000 && readings.get() < count; i++) Thread.sleep(10);
        assertTrue(readings.get() >= count, () -> "heard " + readings + " of " + count);
    }
}
