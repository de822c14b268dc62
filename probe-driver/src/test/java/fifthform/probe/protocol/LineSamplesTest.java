package fifthform.probe.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.probe.Signal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of {@code reference/line_samples.csv}, an invented table; its head says where it comes from. */
class LineSamplesTest {
    /** One row of the table. */
    record Row(String line, String outcome, String tip, String junction, String channel, String why) {
        /** The line after enough others like it that the decoder knows where lines begin and what columns mean. */
        String[] inContext() {
            List<String> lines = new ArrayList<>();
            boolean stamped = line.startsWith("12345");
            for (int before = 3; before > 0; before--)
                lines.add(stamped ? line.replace("345", "34" + (5 - before)) : line);
            lines.add(line);
            return lines.toArray(String[]::new);
        }
    }

    static Stream<Row> rows() {
        try (InputStream in = LineSamplesTest.class.getResourceAsStream("/reference/line_samples.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().skip(2).map(LineSamplesTest::row).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The line is quoted, with doubled quotes inside; the other columns are bare, and only the last may hold commas. */
    private static Row row(String csv) {
        int end = 1;
        while (csv.charAt(end) != '"' || csv.startsWith("\"\"", end)) end += csv.charAt(end) == '"' ? 2 : 1;
        String line =
                csv.substring(1, end).replace("\"\"", "\"").replace("\\t", "\t").replace("\\r", "\r");
        String[] rest = csv.substring(end + 2).split(",", 5);
        return new Row(line, rest[0], rest[1], rest[2], rest[3], rest[4]);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyRowComesOutAsTheTableSays(Row row) {
        String[] lines = row.inContext();
        List<Signal> signals = Decoding.lines(lines);
        List<Signal> expected = expected(row);
        assertEquals(expected.size() * lines.length, signals.size(), () -> row + " gave " + signals);
        List<Signal> last = signals.subList(signals.size() - expected.size(), signals.size());
        assertEquals(expected, last.stream().map(LineSamplesTest::withoutStep).toList());
    }

    private static List<Signal> expected(Row row) {
        return switch (row.outcome()) {
            case "measured" -> List.of(measured(Integer.parseInt(row.channel()), row.tip(), row.junction()));
            case "measured twice" -> {
                int first = Integer.parseInt(row.channel());
                yield List.of(measured(first, row.tip(), ""), measured(first + 1, "41.00", ""));
            }
            case "open circuit" -> List.of(new Signal.OpenCircuit(0));
            case "short circuit" -> List.of(new Signal.Shorted(0));
            case "out of range" -> List.of(new Signal.OutOfRange(0, Double.parseDouble(row.line())));
            case "unreadable" -> List.of(new Signal.Unreadable(row.line().length()));
            case "nothing" -> List.of();
            default -> throw new IllegalArgumentException("the table has a new outcome: " + row.outcome());
        };
    }

    private static Signal measured(int channel, String tip, String junction) {
        OptionalDouble cold =
                junction.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(junction));
        return new Signal.Measured(channel, Double.parseDouble(tip), cold, OptionalDouble.empty(), 1);
    }

    /** The table has no column for the resolution; {@link TextLinesTest} holds it. */
    private static Signal withoutStep(Signal signal) {
        return signal instanceof Signal.Measured m
                ? new Signal.Measured(m.channel(), m.tipCelsius(), m.junctionCelsius(), m.emfMillivolts(), 1)
                : signal;
    }

    @Test
    void theTableIsThere() {
        assertEquals(40, rows().count());
        assertTrue(Collections.frequency(rows().map(Row::outcome).toList(), "unreadable") >= 6);
    }
}
