package fifthform.monitor.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fifthform.curves.check.Parsed;
import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.Talk;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.SerialSource;
import fifthform.probe.reader.ProbeLine;
import fifthform.probe.reader.ProbeReader;
import fifthform.probe.reader.ReaderClock;
import fifthform.simulator.device.Language;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.ScenarioText;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A pretend kitchen at one end of a real serial line, the program's own reader at the other. */
@Timeout(120)
class PracticeServerTest {
    private static final Instant START = Instant.parse("2026-01-10T09:00:00Z");
    private static final String TEXT = """
            demo = invented for a test
            title = A test
            about = Nothing much.
            chocolate = dark
            bowl = steel
            maker = own-way
            room = 23 C
            noise = 0 K
            """;

    @TempDir
    Path folder;

    private Optional<Process> socat = Optional.empty();
    private final List<Input> inputs = new CopyOnWriteArrayList<>();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "text-lines",
                "max31855:form=binary,sync=AA55",
                "modbus-rtu:register=8",
                "scpi:line-end=crlf",
            })
    void whoListensHearsTheKitchen(String talk) throws Exception {
        connect();
        Language language = accepted(Language.of(accepted(Talk.parse(talk))));
        RunningKitchen kitchen = kitchen(language);
        PracticeServer server = new PracticeServer(kitchen, port("far", language), 10);
        try (ProbeReader reader = reader(language)) {
            reader.start();
            await("the opening", reader::isReading);
            CompletableFuture<Void> serving = serving(server);
            await("readings", () -> samples().count() >= 8);
            server.close();
            serving.get(5, TimeUnit.SECONDS);
            double seconds = Duration.between(START, kitchen.now()).toMillis() / 1000.0;
            assertTrue(seconds > 2 && seconds < 300, "the kitchen has gone on by " + seconds + " s");
        }
        // Solid pieces on the table are as warm as the room; the converter's step is a quarter of a kelvin.
        double first = samples().findFirst().orElseThrow().tipCelsius();
        assertEquals(23, first, 0.2);
    }

    @Test
    void anAdapterOutOfItsSocketIsSilentAndComesBack() throws Exception {
        connect();
        Language language = Language.TEXT_LINES;
        RunningKitchen kitchen = kitchen(language, "fault = unplugged for 40 s, 10 s after start");
        PracticeServer server = new PracticeServer(kitchen, port("far", language), 10);
        try (ProbeReader reader = reader(language)) {
            reader.start();
            await("the opening", reader::isReading);
            CompletableFuture<Void> serving = serving(server);
            await(
                    "the silence",
                    () -> inputs.stream()
                            .anyMatch(input ->
                                    input instanceof ProbeFault fault && fault.cause() == ProbeFault.Cause.SILENT));
            long before = samples().count();
            await("the return", () -> samples().count() > before + 5);
            server.close();
            serving.get(5, TimeUnit.SECONDS);
        }
    }

    @Test
    void aPortThatIsNotThereIsSaid() {
        Language language = Language.TEXT_LINES;
        try (PracticeServer server = new PracticeServer(kitchen(language), port("nowhere", language), 1)) {
            assertThrows(LinkException.class, server::serve);
        }
    }

    @Test
    void fasterThanALineCarriesIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new PracticeServer(kitchen(Language.TEXT_LINES), port("far", Language.TEXT_LINES), 11));
    }

    private static CompletableFuture<Void> serving(PracticeServer server) {
        return CompletableFuture.runAsync(() -> {
            try {
                server.serve();
            } catch (LinkException | InterruptedException e) {
                throw new AssertionError(e);
            }
        });
    }

    private RunningKitchen kitchen(Language language, String... more) {
        String text = TEXT + String.join("\n", more);
        Scenario scenario = accepted(ScenarioText.parse("test", text));
        return accepted(scenario.speaking(language)).start(START);
    }

    private SerialSource port(String end, Language language) {
        return new SerialSource(folder.resolve(end).toString(), language.line(), new WallClock());
    }

    private ProbeReader reader(Language language) {
        ProbeLine line =
                new ProbeLine("bowl", port("near", language), language.protocol(), Map.of(0, new ProbeId("bowl")));
        return new ProbeReader(line, new WallClock(), inputs::add, () -> {});
    }

    private Stream<Sample> samples() {
        return inputs.stream().filter(Sample.class::isInstance).map(Sample.class::cast);
    }

    /** Skips the test where there is no socat; fails instead if {@code -Dserial.required=true}. */
    private void connect() throws IOException, InterruptedException {
        boolean there = Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(path -> Files.isExecutable(Path.of(path, "socat")));
        if (!there && Boolean.getBoolean("serial.required"))
            fail("socat is missing and -Dserial.required=true: install it (Debian: apt install socat)");
        assumeTrue(there, "socat is missing: no serial line can be made for this test");
        Path near = folder.resolve("near");
        Path far = folder.resolve("far");
        socat = Optional.of(new ProcessBuilder("socat", "pty,raw,echo=0,link=" + near, "pty,raw,echo=0,link=" + far)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start());
        await("a pair", () -> Files.exists(near) && Files.exists(far));
    }

    /** A socat that is only about to end takes the ends of its links away while the folder is deleted. */
    @AfterEach
    void disconnect() throws IOException, InterruptedException {
        if (socat.isPresent()) socat.get().destroyForcibly().waitFor();
        Files.deleteIfExists(folder.resolve("near"));
        Files.deleteIfExists(folder.resolve("far"));
    }

    private void await(String what, BooleanSupplier condition) throws InterruptedException {
        for (int i = 0; i < 1500 && !condition.getAsBoolean(); i++) Thread.sleep(20);
        assertTrue(condition.getAsBoolean(), () -> what + " did not come; heard " + inputs);
    }

    private static <T> T accepted(Parsed<T> parsed) {
        return parsed.fold(value -> value, problems -> {
            throw new AssertionError(problems.toString());
        });
    }

    private static final class WallClock implements ReaderClock {
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
