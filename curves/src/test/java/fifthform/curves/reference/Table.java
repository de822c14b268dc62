package fifthform.curves.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** A published or measured table among the test resources; its source stands in its first line. */
public record Table(List<String> columns, List<List<String>> rows) {
    public static Table read(String name) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Table.class.getResourceAsStream("/reference/" + name), name),
                StandardCharsets.UTF_8))) {
            List<List<String>> lines = in.lines()
                    .filter(l -> !l.startsWith("#") && !l.isBlank())
                    .map(l -> Arrays.asList(l.split(",", -1)))
                    .toList();
            return new Table(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows whose column says so. */
    public Table where(String column, String value) {
        int at = columns.indexOf(column);
        return new Table(
                columns, rows.stream().filter(r -> r.get(at).equals(value)).toList());
    }

    /** A column of numbers, in order. */
    public double[] numbers(String column) {
        int at = columns.indexOf(column);
        return rows.stream().mapToDouble(r -> Double.parseDouble(r.get(at))).toArray();
    }
}
