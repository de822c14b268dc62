package fifthform.curves.thermocouple;

import java.util.Objects;
import java.util.Optional;

/**
 * The thermocouple and its converter, as far as the maker or the protocol said.
 *
 * @param type its letter; empty where nobody said, or where it is no thermocouple
 * @param toleranceClass its class
 * @param converter what turns its EMF into numbers
 */
public record Sensor(Optional<ThermocoupleType> type, ToleranceClass toleranceClass, Converter converter) {
    /** Nothing is known: the most common cheap probe is assumed wherever a number is needed. */
    public static final Sensor UNKNOWN = new Sensor(Optional.empty(), ToleranceClass.UNKNOWN, Converter.UNKNOWN);

    public Sensor {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(toleranceClass, "toleranceClass");
        Objects.requireNonNull(converter, "converter");
    }
}
