package fifthform.curves.thermocouple;

import java.util.Locale;

/** What stands between the thermocouple's wires and the number on the line, as far as its faults are known. */
public enum Converter {
    /** Linear with one slope: reads wrong by some tenths where tip and junction differ. */
    MAX31855,
    /** As {@link #MAX31855}, with steps of 0.25 °C. */
    MAX6675,
    /** Linearises by itself. */
    MAX31856,
    /** Linearises by itself. */
    MCP9600,
    /** EMF and junction come over the line and are turned into a temperature here. */
    MILLIVOLTS,
    /** Nobody said. */
    UNKNOWN;

    /** The word in files: {@code max31855}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
