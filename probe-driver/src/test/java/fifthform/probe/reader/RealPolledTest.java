package fifthform.probe.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.Input;
import fifthform.curves.input.ProbeFault;
import fifthform.curves.input.ProbeFault.Cause;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.probe.ProbeProtocol;
import fifthform.probe.Spoken;
import fifthform.probe.Talk;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.PseudoTerminals;
import fifthform.probe.link.SerialSource;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Devices that must be asked, through the operating system's serial driver: neither end of the wire is a fake of ours. */
@Timeout(120)
class RealPolledTest {
    private static final String UNIT = "modbus-rtu:unit=17,every=0.25,timeout=0.3,parity=none,";

    @TempDir
    Path folder;

    private final List<Input> inputs = Collections.synchronizedList(new ArrayList<>());
    private PseudoTerminals pair;

    @BeforeEach
    void connect() throws Exception {
        PseudoTerminals.require("socat");
        for (String script : List.of("registers.py", "instrument.py"))
            try (InputStream in = getClass().getResourceAsStream("/serial/" + script)) {
                Files.copy(in, folder.resolve(script));
            }
        pair = new PseudoTerminals(folder);
        pair.connect();
    }

    @AfterEach
    void disconnect() {
        if (pair != null) pair.close();
    }

    @Test
    void everyFormatAndWordOrderOfAnIndependentServerIsRead() throws Exception {
        startServer(0);
        Map<String, Double> expected = new TreeMap<>(Map.of(
                "register=8", 31.5,
                "register=8,table=holding", 41.5,
                "register=20,format=float32", 31.5,
                "register=22,format=float32,words=low-first", 31.5,
                "register=24,format=int32,scale=0.001", 31.5,
                "register=26,format=int32,scale=0.001,words=low-first", 31.5,
                "register=28,format=uint32,scale=0.001", 31.5,
                "register=30,format=uint32,scale=0.001,words=low-first", 31.5,
                "register=32,format=uint16,scale=0.001", 31.5,
                "register=33", -2.5));
        expected.put("register=38,format=int32,scale=0.001", -2.5);
        expected.put("register=0x14,format=float32,table=holding,in=f", 5.277778);
        for (Map.Entry<String, Double> entry : expected.entrySet()) {
            inputs.clear();
            try (ProbeReader reader = start(UNIT + entry.getKey(), Map.of(0, "bowl"))) {
                await(reader, entry.getKey(), () -> tips("bowl").size() >= 2);
                assertTrue(
                        tips("bowl").stream().allMatch(entry.getValue()::equals),
                        entry.getKey() + " gave " + tips("bowl"));
            }
        }
    }

    @Test
    void channelsWithTheirJunctionComeInOneAnswer() throws Exception {
        startServer(0);
        try (ProbeReader reader = start(UNIT + "registers=8/9,junction-register=10", Map.of(0, "bowl", 1, "bath"))) {
            await(reader, "both", () -> tips("bath").size() >= 2);
            assertEquals(31.5, tips("bowl").get(0));
            assertEquals(41.1, tips("bath").get(0));
            Sample first = (Sample) inputs.get(0);
            assertEquals(25.5, first.junctionCelsius().orElseThrow());
        }
    }

    @Test
    void whatMeansOpenIsNoTemperature() throws Exception {
        startServer(0);
        for (String settings : List.of("register=34,scale=0.001", "register=36,format=float32")) {
            inputs.clear();
            try (ProbeReader reader = start(UNIT + settings, Map.of(0, "bowl"))) {
                await(reader, settings, () -> causes().contains(Cause.OPEN_CIRCUIT));
                assertEquals(List.of(), tips("bowl"), settings);
            }
        }
    }

    @Test
    void readingsGoOnAfterTheServerAndThenTheWireWereGone() throws Exception {
        String python = python();
        Process server = pair.start(python, folder.resolve("registers.py").toString(), pair.far(), "4");
        try (ProbeReader reader = start(UNIT + "register=0", Map.of(0, "bowl"))) {
            await(reader, "the first readings", () -> tips("bowl").size() >= 8);
            assertEquals(tenths(tips("bowl").size()), tips("bowl"), "each once, though every fourth question met busy");

            server.destroyForcibly().waitFor();
            await(reader, "the silence", () -> causes().contains(Cause.SILENT));
            await(reader, "the complaint", () -> told(reader).contains("has not answered"));
            int before = tips("bowl").size();
            pair.start(python, folder.resolve("registers.py").toString(), pair.far(), "0");
            await(reader, "the server's return", () -> tips("bowl").size() >= before + 3);
            await(reader, "the end of the complaint", () -> reader.trouble().isEmpty());

            pair.endAll();
            await(reader, "the loss", () -> causes().contains(Cause.UNPLUGGED));
            int atLoss = tips("bowl").size();
            pair.connect();
            pair.start(python, folder.resolve("registers.py").toString(), pair.far(), "0");
            await(reader, "the wire's return", () -> tips("bowl").size() >= atLoss + 3);
        }
        assertTrue(tips("bowl").stream().allMatch(tip -> tip >= 30 && tip < 35), () -> "invented: " + inputs);
    }

    @Test
    void aRegisterThatIsNotThereIsToldWithWhatToChange() throws Exception {
        startServer(0);
        try (ProbeReader reader = start(UNIT + "register=90", Map.of(0, "bowl"))) {
            await(reader, "the refusal", () -> told(reader).contains("no input register 90"));
            await(reader, "the silence of the probe", () -> causes().contains(Cause.SILENT));
            assertEquals(List.of(), tips("bowl"));
        }
    }

    @Test
    void anInstrumentThatTellsItsUnitIsReadInCelsius() throws Exception {
        startInstrument("full");
        try (ProbeReader reader = start("scpi:every=0.25,timeout=0.4", Map.of(0, "bowl"))) {
            await(reader, "fahrenheit", () -> tips("bowl").size() >= 12);
            assertEquals(hundredths(tips("bowl").size()), tips("bowl"));
        }
    }

    @Test
    void theChannelsOfAnInstrumentAreReadByTheirNumbers() throws Exception {
        startInstrument("full");
        try (ProbeReader reader =
                start("scpi:channels=101/102,every=0.25,timeout=0.4,line-end=crlf", Map.of(0, "bowl", 1, "bath"))) {
            await(reader, "both channels", () -> tips("bath").size() >= 2);
            assertEquals(List.of(31.01, 31.02), tips("bowl").subList(0, 2));
            assertEquals(List.of(41.01, 41.02), tips("bath").subList(0, 2));
        }
    }

    @Test
    void anInstrumentThatKnowsOnlyReadIsFoundOut() throws Exception {
        startInstrument("plain");
        try (ProbeReader reader = start("scpi:every=0.25,timeout=0.3", Map.of(0, "bowl"))) {
            await(reader, "readings", () -> tips("bowl").size() >= 3);
            assertEquals(hundredths(3), tips("bowl").subList(0, 3));
        }
    }

    @Test
    void aMeterThatIsSetToVoltsGivesNoTemperature() throws Exception {
        startInstrument("volts");
        try (ProbeReader reader = start("scpi:every=0.25,timeout=0.3", Map.of(0, "bowl"))) {
            await(reader, "the complaint", () -> told(reader).contains("VOLT:DC"));
            await(reader, "the silence", () -> causes().contains(Cause.SILENT));
            assertEquals(List.of(), tips("bowl"));
        }
    }

    @Test
    void anOverloadedInputIsAnOpenCircuit() throws Exception {
        startInstrument("open");
        try (ProbeReader reader = start("scpi:every=0.25,timeout=0.3", Map.of(0, "bowl"))) {
            await(reader, "the fault", () -> causes().contains(Cause.OPEN_CIRCUIT));
            assertEquals(List.of(), tips("bowl"));
        }
    }

    private void startServer(int busy) throws Exception {
        pair.start(python(), folder.resolve("registers.py").toString(), pair.far(), String.valueOf(busy));
    }

    private static String python() throws InterruptedException {
        return PseudoTerminals.requirePython("python3-pymodbus python3-serial", "pymodbus", "serial");
    }

    private void startInstrument(String kind) throws IOException {
        PseudoTerminals.require("python3");
        pair.start("python3", folder.resolve("instrument.py").toString(), pair.far(), kind);
    }

    private ProbeReader start(String talk, Map<Integer, String> probes) {
        Spoken spoken = Talk.parse(talk)
                .fold(t -> Spoken.of(t, protocols()), RealPolledTest::refused)
                .fold(s -> s, RealPolledTest::refused);
        Map<Integer, ProbeId> ids = new TreeMap<>();
        probes.forEach((channel, name) -> ids.put(channel, new ProbeId(name)));
        SystemReaderClock clock = new SystemReaderClock();
        ProbeLine line =
                new ProbeLine("polled", new SerialSource(pair.near(), spoken.line(), clock), spoken.protocol(), ids);
        ProbeReader reader = new ProbeReader(line, clock, inputs::add, () -> {});
        reader.start();
        return reader;
    }

    private static <R> R refused(Object problems) {
        throw new AssertionError(problems.toString());
    }

    private static List<ProbeProtocol> protocols() {
        return ServiceLoader.load(ProbeProtocol.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
    }

    private static String told(ProbeReader reader) {
        return reader.trouble().map(LinkException::getMessage).orElse("");
    }

    private static List<Double> tenths(int count) {
        return Stream.iterate(300, number -> number + 1)
                .limit(count)
                .map(number -> number / 10.0)
                .toList();
    }

    private static List<Double> hundredths(int count) {
        return Stream.iterate(3101, number -> number + 1)
                .limit(count)
                .map(number -> number / 100.0)
                .toList();
    }

    private List<Double> tips(String probe) {
        synchronized (inputs) {
            return inputs.stream()
                    .filter(input -> input instanceof Sample s && s.probe().equals(new ProbeId(probe)))
                    .map(input -> ((Sample) input).tipCelsius())
                    .toList();
        }
    }

    private List<Cause> causes() {
        synchronized (inputs) {
            return inputs.stream()
                    .filter(ProbeFault.class::isInstance)
                    .map(input -> ((ProbeFault) input).cause())
                    .toList();
        }
    }

    /** Waits for what another process and the operating system do in their own time. */
    private void await(ProbeReader reader, String what, BooleanSupplier condition) throws InterruptedException {
        for (int i = 0; i < 1000 && !condition.getAsBoolean(); i++) Thread.sleep(20);
        assertTrue(condition.getAsBoolean(), () -> what + " did not come; told " + told(reader) + ", heard " + inputs);
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
}
