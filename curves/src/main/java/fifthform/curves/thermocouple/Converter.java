package fifthform.curves.thermocouple;

import fifthform.curves.constants.PackedTable;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** What stands between the thermocouple's wires and the number on the line, as far as its faults are known. */
public enum Converter {
    /** Linear with one slope: reads wrong by some tenths where tip and junction differ. */
    MAX31855,
    /** As {@link #MAX31855}, with steps of 0.25 °C, and it keeps its junction to itself. */
    MAX6675,
    /** Linearises by itself. */
    MAX31856,
    /** Linearises by itself. */
    MCP9600,
    /** EMF and junction come over the line and are turned into a temperature here. */
    MILLIVOLTS,
    /**
     * Nobody said. Nothing is corrected, and {@link #MAX31855} is assumed where an uncertainty is needed: most cheap
     * adapters hold such a converter (common practice, no source).
     */
    UNKNOWN("max31855");

    private static final double MILLIVOLTS_PER_MICROVOLT = 1e-3;

    private final Map<ThermocoupleType, Double> slopes = new EnumMap<>(ThermocoupleType.class);
    private final double tipLimitKelvin;
    private final double tipShareOfAbsCelsius;
    private final double junctionLimitKelvin;

    Converter() {
        this("");
    }

    /** @param likened the converter whose data it takes; its own where that is empty */
    Converter(String likened) {
        String data = likened.isEmpty() ? word() : likened;
        PackedTable mine = PackedTable.read("thermocouple/converter_slopes.csv").where("converter", data);
        for (List<String> row : mine.rows()) {
            slopes.put(
                    ThermocoupleType.valueOf(mine.text(row, "type")),
                    MILLIVOLTS_PER_MICROVOLT * mine.number(row, "slope_uV_per_K"));
        }
        PackedTable limits = PackedTable.read("thermocouple/converters.csv").where("converter", data);
        List<String> row = limits.rows().get(0);
        tipLimitKelvin = limits.number(row, "tip_limit_K");
        tipShareOfAbsCelsius = limits.number(row, "tip_share_of_abs_t");
        junctionLimitKelvin = limits.number(row, "junction_limit_K");
    }

    /** The word in files: {@code max31855}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The one slope with which it turns EMF into temperature, mV/K; empty for those that linearise. Source: data sheets,
     * from memory, in {@code thermocouple/converter_slopes.csv}.
     */
    public OptionalDouble slopeMillivoltsPerKelvin(ThermocoupleType type) {
        return slopes.containsKey(type) ? OptionalDouble.of(slopes.get(type)) : OptionalDouble.empty();
    }

    /** Whether the junction on its line is the one with which it reckoned. */
    public boolean tellsItsJunction() {
        return this == MAX31855 || this == MAX31856 || this == MCP9600 || this == MILLIVOLTS;
    }

    /**
     * How far it may be wrong in turning EMF into temperature, ± K, junction and one slope apart; a limit. Source: data
     * sheets, in {@code thermocouple/converters.csv}.
     *
     * @param celsius temperature of the tip, °C
     */
    public double tipLimitKelvin(double celsius) {
        return tipLimitKelvin + tipShareOfAbsCelsius * Math.abs(celsius);
    }

    /** How far its measurement of the cold junction may be wrong, ± K; a limit, from the same source. */
    public double junctionLimitKelvin() {
        return junctionLimitKelvin;
    }
}
