package fifthform.curves.probecheck;

import fifthform.curves.thermocouple.Converter;
import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;
import fifthform.curves.thermocouple.ToleranceClass;

/**
 * What a sensor's class and converter allow it to be off.
 *
 * <p>Classes: IEC 60584-1:2013, from memory and read second-hand. Converters: their data sheets, from memory. Where
 * nobody said, class 2 of type K and 2 K for the converter are assumed, the most usual cheap probe.
 */
final class Allowed {
    private Allowed() {}

    /** Most that wire and converter together may be off between 0 and 100 °C, K. */
    static double kelvin(Sensor sensor) {
        return wireKelvin(sensor) + converterKelvin(sensor.converter());
    }

    /** The class's limit below some hundred degrees, K. */
    private static double wireKelvin(Sensor sensor) {
        boolean copper =
                sensor.type().filter(type -> type == ThermocoupleType.T).isPresent();
        return sensor.toleranceClass() == ToleranceClass.CLASS_1 ? copper ? 0.5 : 1.5 : copper ? 1.0 : 2.5;
    }

    /** Share of the temperature by which the wire's slope may be off: the class's limit at high temperatures. */
    static double wireShare(Sensor sensor) {
        return switch (sensor.toleranceClass()) {
            case CLASS_1 -> 0.004;
            case CLASS_2, UNKNOWN -> 0.0075;
            case CLASS_3 -> 0.015;
        };
    }

    private static double converterKelvin(Converter converter) {
        return switch (converter) {
            // Tip and junction, 2 K each.
            case MAX31855, MAX6675 -> 4;
            case MAX31856 -> 0.7;
            case MCP9600 -> 1.5;
            case MILLIVOLTS, UNKNOWN -> 2;
        };
    }
}
