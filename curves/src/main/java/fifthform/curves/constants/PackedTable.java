package fifthform.curves.constants;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A table of constants that is packed with this class: commas between cells, cells with commas in double quotes, names in the first row, sources in lines
 * that begin with {@code #}. It is the one reader of files in {@code curves}: constants from outside stand as data with
 * their source, and are as fixed as code.
 */
public record PackedTable(List<String> columns, List<List<String>> rows) {
    /**
     * Reads a table; one that is missing is a fault of the packing.
     *
     * @param name folder and name within the packed files, as {@code thermocouple/tolerance.csv}
     */
    public static PackedTable read(String name) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(PackedTable.class.getResourceAsStream("/" + name), name),
                StandardCharsets.UTF_8))) {
            List<List<String>> lines = in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(PackedTable::cells)
                    .toList();
            return new PackedTable(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Text between double quotes may hold commas. */
    private static List<String> cells(String line) {
        if (line.indexOf('"') < 0) return Arrays.asList(line.split(",", -1));
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    /** The rows whose column says so. */
    public PackedTable where(String column, String value) {
        return new PackedTable(
                columns,
                rows.stream().filter(row -> text(row, column).equals(value)).toList());
    }

    /** What stands in a column of a row. */
    public String text(List<String> row, String column) {
        return row.get(columns.indexOf(column));
    }

    /** The number in a column of a row. */
    public double number(List<String> row, String column) {
        return Double.parseDouble(text(row, column));
    }
}
