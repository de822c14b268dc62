package fifthform.monitor.intake;

import fifthform.monitor.intake.CsvColumns.Column;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How a table is laid out where its first line does not say it by our names.
 *
 * @param separator between two cells
 * @param decimals how decimals are written
 * @param zone the clock of times without an offset
 * @param named columns as somebody named them, by what they hold
 */
public record CsvLayout(char separator, Decimals decimals, ZoneId zone, Map<Column, String> named) {
    /** How decimals are written. */
    public enum Decimals {
        POINT,
        /** After a comma or a point. */
        COMMA
    }

    public CsvLayout {
        Objects.requireNonNull(decimals, "decimals");
        Objects.requireNonNull(zone, "zone");
        named = Map.copyOf(named);
    }

    /** As RFC 4180 has it, with our own names for the columns. */
    static CsvLayout usual() {
        return new CsvLayout(',', Decimals.POINT, ZoneId.of("UTC"), Map.of());
    }

    /**
     * The layout of a table by its first line: where cells are apart by semicolons or tabs, a comma is a decimal one.
     *
     * @param text the whole table
     */
    public static CsvLayout of(String text, ZoneId zone) {
        String header = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        char separator = header.contains(",") ? ',' : header.contains(";") ? ';' : header.contains("\t") ? '\t' : ',';
        return new CsvLayout(separator, separator == ',' ? Decimals.POINT : Decimals.COMMA, zone, Map.of());
    }

    /** The same, with the columns that somebody named; what is empty was not named. */
    public CsvLayout with(
            Optional<String> time,
            Optional<String> chocolate,
            Optional<String> bath,
            Optional<String> room,
            Scale scale) {
        Map<Column, String> all = new EnumMap<>(Column.class);
        boolean fahrenheit = scale == Scale.FAHRENHEIT;
        time.ifPresent(name -> all.put(Column.TIME, name));
        chocolate.ifPresent(name -> all.put(fahrenheit ? Column.TEMPERATURE_F : Column.TEMPERATURE_C, name));
        bath.ifPresent(name -> all.put(fahrenheit ? Column.BATH_F : Column.BATH_C, name));
        room.ifPresent(name -> all.put(fahrenheit ? Column.ROOM_F : Column.ROOM_C, name));
        return new CsvLayout(separator, decimals, zone, all);
    }

    /** The scale of the columns that somebody named. */
    public enum Scale {
        CELSIUS,
        FAHRENHEIT
    }
}
