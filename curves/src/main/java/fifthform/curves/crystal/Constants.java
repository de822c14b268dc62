package fifthform.curves.crystal;

import fifthform.curves.check.Require;
import fifthform.curves.constants.PackedTable;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The numbers of the crystal model by the names of their table, {@code crystal/kinetics.csv}, where each has its unit,
 * what it rests on and whether it is from a source, calibrated or from memory. Rate constants are per minute.
 */
public final class Constants {
    private static final PackedTable TABLE = PackedTable.read("crystal/kinetics.csv");

    /** As the table has them. */
    public static final Constants PACKED = new Constants(packed());

    private final SortedMap<String, Double> values;

    private Constants(SortedMap<String, Double> values) {
        this.values = values;
    }

    private static SortedMap<String, Double> packed() {
        SortedMap<String, Double> values = new TreeMap<>();
        for (List<String> row : TABLE.rows()) values.put(TABLE.text(row, "name"), TABLE.number(row, "value"));
        return values;
    }

    /** The number of this name, in its unit of the table; a name that is not there is a fault of the caller. */
    public double value(String name) {
        return Objects.requireNonNull(values.get(name), name);
    }

    /** Where the number comes from: {@code source}, {@code calibrated}, {@code memory} … */
    public String origin(String name) {
        return TABLE.text(TABLE.where("name", name).rows().get(0), "origin");
    }

    /** The same with one number changed, for whoever asks what it matters. */
    public Constants with(String name, double value) {
        value(name);
        SortedMap<String, Double> changed = new TreeMap<>(values);
        changed.put(name, Require.finite(value, name));
        return new Constants(changed);
    }
}
