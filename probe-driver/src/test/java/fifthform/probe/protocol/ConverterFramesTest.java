package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.ProbeProtocol;
import fifthform.probe.Signal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of {@code reference/converter_frames.csv}, whose head and last column say where it comes from. */
class ConverterFramesTest {
    /** What every fault of the table is to us. */
    private static final Map<String, Class<? extends Signal>> FAULTS = Map.ofEntries(
            Map.entry("open circuit", Signal.OpenCircuit.class),
            Map.entry("short to ground", Signal.Shorted.class),
            Map.entry("short to supply", Signal.Shorted.class),
            Map.entry("over or under voltage", Signal.Shorted.class),
            Map.entry("tip low alarm", Signal.OutOfRange.class),
            Map.entry("tip high alarm", Signal.OutOfRange.class),
            Map.entry("tip out of range", Signal.OutOfRange.class),
            Map.entry("junction out of range", Signal.OutOfRange.class),
            Map.entry("all zero: line held low, no converter", Signal.Unreadable.class),
            Map.entry("all ones: line held high, no converter", Signal.Unreadable.class),
            Map.entry("reserved bit D17 set", Signal.Unreadable.class),
            Map.entry("reserved bit D3 set", Signal.Unreadable.class));

    record Row(String chip, String frame, String hot, String junction, String fault) {
        ProbeProtocol protocol() {
            return switch (chip) {
                case "MAX31855" -> new Max31855();
                case "MAX6675" -> new Max6675();
                case "MAX31856" -> new Max31856();
                case "MCP9600" -> new Mcp9600();
                default -> throw new IllegalArgumentException("the table has a new chip: " + chip);
            };
        }

        /** A temperature near zero of this chip: without one, zeros could be a dead line. */
        String nearZero() {
            return switch (chip) {
                case "MAX31855" -> "00041900";
                case "MAX31856" -> "0000 000100 00";
                case "MAX6675" -> "0008";
                default -> "0002";
            };
        }
    }

    static Stream<Row> rows() {
        try (InputStream in = ConverterFramesTest.class.getResourceAsStream("/reference/converter_frames.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines().skip(2).map(ConverterFramesTest::row).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Only the fault and the source may be quoted, and hold commas then. */
    private static Row row(String line) {
        String[] cells = line.split(",", 5);
        String fault =
                cells[4].startsWith("\"") ? cells[4].substring(1, cells[4].indexOf('"', 1)) : cells[4].split(",")[0];
        return new Row(cells[0], cells[1], cells[2], cells[3], fault);
    }

    @Test
    void theTableIsThere() {
        assertEquals(60, rows().count());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyFrameMeansWhatTheTableSays(Row row) {
        for (String form : List.of(
                row.frame(),
                row.frame().toLowerCase(java.util.Locale.ROOT),
                "0x" + row.frame().replace(" ", ""),
                row.frame().replace(" ", "").replaceAll("(..)(?=.)", "$1 "),
                "raw: " + row.frame())) {
            List<Signal> signals = signals(row.protocol(), row.nearZero(), row.nearZero(), form);
            assertMeans(row, signals.get(signals.size() - 1));
        }
    }

    private static void assertMeans(Row row, Signal signal) {
        if (!row.fault().isEmpty()) {
            assertInstanceOf(FAULTS.getOrDefault(row.fault(), Signal.Measured.class), signal);
            if (FAULTS.containsKey(row.fault())) return;
        }
        double hot = Double.parseDouble(row.hot());
        if (hot < -20 || hot > 150) {
            assertEquals(new Signal.OutOfRange(0, hot), signal);
            return;
        }
        Signal.Measured measured = assertInstanceOf(Signal.Measured.class, signal);
        assertEquals(hot, measured.tipCelsius(), 5e-7, "a millionth is the finest that a signal keeps");
        if (row.junction().isEmpty()) assertTrue(measured.junctionCelsius().isEmpty());
        else
            assertEquals(
                    Double.parseDouble(row.junction()),
                    measured.junctionCelsius().getAsDouble());
    }

    static List<Signal> signals(ProbeProtocol protocol, String... lines) {
        List<Signal> signals = new ArrayList<>();
        protocol.newDecoder().feed((String.join("\n", lines) + "\n").getBytes(StandardCharsets.US_ASCII), signals::add);
        return signals;
    }
}
