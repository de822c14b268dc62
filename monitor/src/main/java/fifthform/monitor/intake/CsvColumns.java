package fifthform.monitor.intake;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which column of a table holds what; columns with other names are ignored. */
final class CsvColumns {
    /** The columns that mean something. */
    enum Column {
        TIME_S,
        TEMPERATURE_C,
        TEMPERATURE_F,
        BATH_C,
        ROOM_C,
        EVENT;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static final String EXAMPLE = "Begin the file with a line like: time_s,temperature_c";

    private final Map<Column, Integer> places;
    private final int count;

    private CsvColumns(Map<Column, Integer> places, int count) {
        this.places = places;
        this.count = count;
    }

    /** The columns that a header names, or all that is wrong with it. */
    static Parsed<CsvColumns> of(String name, List<String> header) {
        List<Problem> problems = new ArrayList<>();
        Map<Column, Integer> places = new EnumMap<>(Column.class);
        for (int place = 0; place < header.size(); place++) {
            Optional<Column> column = column(header.get(place));
            if (column.isPresent() && places.putIfAbsent(column.get(), place) != null) {
                problems.add(new Problem(
                        name,
                        "The column " + column.get().word() + " is there twice.",
                        "Give one of the two another name."));
            }
        }
        if (!places.containsKey(Column.TIME_S)) problems.add(missing(name, header, Column.TIME_S));
        boolean celsius = places.containsKey(Column.TEMPERATURE_C);
        boolean fahrenheit = places.containsKey(Column.TEMPERATURE_F);
        if (!celsius && !fahrenheit) problems.add(missing(name, header, Column.TEMPERATURE_C));
        if (celsius && fahrenheit) {
            problems.add(new Problem(
                    name,
                    "There are both temperature_c and temperature_f, and which to trust is not known.",
                    "Keep one of the two."));
        }
        return problems.isEmpty() ? Parsed.accepted(new CsvColumns(places, header.size())) : Parsed.refused(problems);
    }

    boolean has(Column column) {
        return places.containsKey(column);
    }

    /** What stands in the column; empty where nothing does, or where the row is too short to have it. */
    String cell(Column column, List<String> row) {
        int place = places.getOrDefault(column, Integer.MAX_VALUE);
        return place < row.size() ? row.get(place).strip() : "";
    }

    private static Optional<Column> column(String word) {
        // A byte order mark is how some spreadsheets begin a file.
        String plain = word.replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(Column.values())
                .filter(c -> c.word().equals(plain))
                .findFirst();
    }

    /** How many columns the header names. */
    int count() {
        return count;
    }

    private static Problem missing(String name, List<String> header, Column column) {
        String line = String.join(",", header);
        String what = "There is no column " + column.word() + " in its first line (" + line + ").";
        if (header.size() == 1 && line.contains(";")) {
            return new Problem(name, what, "It is separated by semicolons: save it with commas.");
        }
        return new Problem(
                name,
                what,
                Nearest.to(column.word(), header)
                        .filter(near -> column(near).isEmpty())
                        .map(near -> "If \"" + near + "\" is it, name it " + column.word() + ".")
                        .orElse(EXAMPLE));
    }
}
