package fifthform.curves.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A reference table: comment lines, a header, then rows by the names of their columns. */
final class Table {
    private static final String OUTSIDE_QUOTES = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    private Table() {}

    static List<Map<String, String>> rows(String name) {
        try (InputStream in = Table.class.getResourceAsStream("/reference/" + name)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
            String[] header = cells(lines.get(0));
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = cells(line);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < header.length; i++) row.put(header[i], cells[i]);
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static String[] cells(String line) {
        String[] cells = line.split(OUTSIDE_QUOTES, -1);
        for (int i = 0; i < cells.length; i++) cells[i] = cells[i].replaceAll("^\"|\"$", "");
        return cells;
    }
}
