package fifthform.monitor.intake;

import fifthform.curves.check.Nearest;
import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.monitor.texts.FileText;
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
    public enum Column {
        /** Seconds, or by date and time of day, whichever its cells are. */
        TIME("time"),
        TIME_S("elapsed (s)"),
        TEMPERATURE_C("bowl (°c)"),
        TEMPERATURE_F("bowl (°f)"),
        BATH_C("bath (°c)"),
        BATH_F("bath (°f)"),
        ROOM_C("room (°c)"),
        ROOM_F("room (°f)"),
        EVENT("event");

        /** As our own export names it, in small letters. */
        private final String exported;

        Column(String exported) {
            this.exported = exported;
        }

        boolean isNamed(String header) {
            return word().equals(header) || exported.equals(header);
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static final Map<Column, Column> SAME = Map.of(
            Column.TEMPERATURE_C, Column.TEMPERATURE_F, Column.BATH_C, Column.BATH_F, Column.ROOM_C, Column.ROOM_F);

    private final Map<Column, Integer> places;
    private final int count;

    private CsvColumns(Map<Column, Integer> places, int count) {
        this.places = places;
        this.count = count;
    }

    /** The columns that a header names, or all that is wrong with it. */
    static Parsed<CsvColumns> of(String name, List<String> header) {
        return of(name, header, Map.of());
    }

    /**
     * The columns that a header names, or all that is wrong with it.
     *
     * @param named columns that somebody named; of what they hold the header's own names count no more
     */
    static Parsed<CsvColumns> of(String name, List<String> header, Map<Column, String> named) {
        List<Problem> problems = new ArrayList<>();
        Map<Column, Integer> places = new EnumMap<>(Column.class);
        named.forEach((column, word) -> place(header, word)
                .ifPresentOrElse(place -> places.put(column, place), () -> problems.add(notThere(name, header, word))));
        for (int place = 0; place < header.size(); place++) {
            Optional<Column> column = column(header.get(place)).filter(c -> !isNamed(c, named));
            if (column.isPresent() && places.putIfAbsent(column.get(), place) != null) {
                problems.add(new Problem(
                        name,
                        FileText.THE_COLUMN_IS_THERE_TWICE.say(column.get().word()),
                        FileText.GIVE_ONE_OF_THE_TWO_ANOTHER_CSV_COLUMNS.say()));
            }
        }
        // Where a table has both, ours is seconds; only in our own export the other says when that was.
        boolean own = places.containsKey(Column.TIME_S)
                && !plain(header.get(places.get(Column.TIME_S))).equals("time_s");
        if (named.containsKey(Column.TIME) || own && places.containsKey(Column.TIME)) places.remove(Column.TIME_S);
        else if (places.containsKey(Column.TIME_S)) places.remove(Column.TIME);
        if (!places.containsKey(Column.TIME_S) && !places.containsKey(Column.TIME))
            problems.add(missing(name, header, Column.TIME_S));
        boolean celsius = places.containsKey(Column.TEMPERATURE_C);
        boolean fahrenheit = places.containsKey(Column.TEMPERATURE_F);
        if (!celsius && !fahrenheit) problems.add(missing(name, header, Column.TEMPERATURE_C));
        if (celsius && fahrenheit) {
            problems.add(
                    new Problem(name, FileText.THERE_ARE_BOTH_TEMPERATURE_C.say(), FileText.KEEP_ONE_OF_THE_TWO.say()));
        }
        return problems.isEmpty() ? Parsed.accepted(new CsvColumns(places, header.size())) : Parsed.refused(problems);
    }

    /** Whether somebody named the column for what this one holds, on whichever scale. */
    private static boolean isNamed(Column column, Map<Column, String> named) {
        if (named.containsKey(column)) return true;
        if (column == Column.TIME_S) return named.containsKey(Column.TIME);
        return SAME.entrySet().stream()
                .anyMatch(pair -> (pair.getKey() == column || pair.getValue() == column)
                        && (named.containsKey(pair.getKey()) || named.containsKey(pair.getValue())));
    }

    private static Optional<Integer> place(List<String> header, String word) {
        for (int place = 0; place < header.size(); place++)
            if (plain(header.get(place)).equals(plain(word))) return Optional.of(place);
        return Optional.empty();
    }

    private static Problem notThere(String name, List<String> header, String word) {
        return new Problem(
                name,
                FileText.THERE_IS_NO_COLUMN_IN_ITS.say(word),
                FileText.NAME_ONE_OF_THESE.say(String.join(", ", header)));
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
        String plain = plain(word);
        return Arrays.stream(Column.values()).filter(c -> c.isNamed(plain)).findFirst();
    }

    private static String plain(String word) {
        // A byte order mark is how some spreadsheets begin a file.
        return word.replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT);
    }

    /** How many columns the header names. */
    int count() {
        return count;
    }

    private static Problem missing(String name, List<String> header, Column column) {
        String line = String.join(",", header);
        String what = FileText.THERE_IS_NO_COLUMN_IN_ITS_CSV_COLUMNS.say(column.word(), line);
        if (header.size() == 1 && line.contains(";")) {
            return new Problem(name, what, FileText.IT_IS_SEPARATED_BY_SEMICOLONS.say());
        }
        return new Problem(
                name,
                what,
                Nearest.to(column.word(), header)
                        .filter(near -> column(near).isEmpty())
                        .map(near -> FileText.IF_IS_IT_NAME_IT.say(near, column.word()))
                        .orElse(FileText.BEGIN_WITH_A_LINE_LIKE.say()));
    }
}
