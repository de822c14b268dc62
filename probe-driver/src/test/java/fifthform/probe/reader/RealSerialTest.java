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
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The whole way through the operating system's serial driver, with a writer that is not Java and not ours. */
@Timeout(120)
class RealSerialTest {
    @TempDir
    Path folder;

    private final List<Input> inputs = Collections.synchronizedList(new ArrayList<>());

    @Test
    void everyLineSentIsHeldAndPullingThePlugIsAGapNotAnEnd() throws Exception {
        PseudoTerminals.require("socat", "python3");
        Path speak = folder.resolve("speak.py");
        try (InputStream script = getClass().getResourceAsStream("/serial/speak.py")) {
            Files.copy(script, speak);
        }
        try (PseudoTerminals pair = new PseudoTerminals(folder)) {
            pair.connect();
            try (ProbeReader reader = reader(pair.near())) {
                reader.start();
                // The reader must be there first: what is written to a port that nobody has opened is lost.
                await("the opening", reader::isReading);
                pair.start("python3", speak.toString(), pair.far(), "1", "40", "60");
                await("the first forty lines", () -> tips().size() >= 40);
                assertEquals(celsius(1, 40), tips());

                pair.endAll();
                await("the loss", () -> causes().contains(ProbeFault.Cause.UNPLUGGED));
                await("the reason", () -> reader.trouble().isPresent());

                pair.connect();
                await("the return", reader::isReading);
                pair.start("python3", speak.toString(), pair.far(), "41", "80", "60");
                await("the second forty lines", () -> tips().size() >= 80);
                assertEquals(celsius(1, 80), tips());
            }
        }
        assertTrue(IntStream.range(1, inputs.size())
                .noneMatch(i -> inputs.get(i).at().isBefore(inputs.get(i - 1).at())));
        assertTrue(Thread.getAllStackTraces().keySet().stream()
                .noneMatch(t -> t.getName().equals("probe-bowl")));
    }

    private ProbeReader reader(String port) {
        SystemReaderClock clock = new SystemReaderClock();
        ProbeLine line = new ProbeLine(
                "bowl",
                new SerialSource(port, new LineSettings(9600), clock),
                new TextLines(),
                Map.of(0, new ProbeId("bowl")));
        return new ProbeReader(line, clock, inputs::add, () -> {});
    }

    /** The real time, as a session has it. */
    private static final class SystemReaderClock implements ReaderClock {
        @Override
        public Instant instant() {
            return Instant.now();
        }

        @Override
        public void pause(Duration duration) throws InterruptedException {
            Thread.sleep(duration.toMillis());
        }
    }

    private static List<Double> celsius(int first, int last) {
        return IntStream.rangeClosed(first, last)
                .mapToObj(number -> (3000 + number) / 100.0)
                .toList();
    }

    private List<Double> tips() {
        synchronized (inputs) {
            return inputs.stream()
                    .filter(Sample.class::isInstance)
                    .map(input -> ((Sample) input).tipCelsius())
                    .toList();
        }
    }

    private List<ProbeFault.Cause> causes() {
        synchronized (inputs) {
            return inputs.stream()
                    .filter(ProbeFault.class::isInstance)
                    .map(input -> ((ProbeFault) input).cause())
                    .toList();
        }
    }

    /** Waits for what another process and the operating system do in their own time. */
    private void await(String what, BooleanSupplier condition) throws InterruptedException {
        for (int i = 0; i < 1500 && !condition.getAsBoolean(); i++) Thread.sleep(20);
        assertTrue(condition.getAsBoolean(), () -> what + " did not come; heard " + inputs);
    }
}
