package fifthform.curves.probecheck;

import fifthform.curves.thermocouple.Sensor;
import fifthform.curves.thermocouple.ThermocoupleType;

/** What a sensor's class and converter allow it to be off; the most usual cheap probe where nobody said. */
final class Allowed {
    private Allowed() {}

    static ThermocoupleType wire(Sensor sensor) {
        return sensor.type().orElse(ThermocoupleType.K);
    }

    /** Most that wire, converter and its junction together may be off at {@code celsius}, K. */
    static double kelvin(Sensor sensor, double celsius) {
        return sensor.toleranceClass().limitKelvin(wire(sensor), celsius)
                + sensor.converter().tipLimitKelvin(celsius)
                + sensor.converter().junctionLimitKelvin();
    }

    /**
     * Share of the temperature by which the wire's slope may be off: what its class allows at high temperatures, where the
     * limit grows with the temperature (IEC 60584-1:2013, from memory and read second-hand).
     */
    static double wireShare(Sensor sensor) {
        return switch (sensor.toleranceClass()) {
            case CLASS_1 -> 0.004;
            case CLASS_2, UNKNOWN -> 0.0075;
            case CLASS_3 -> 0.015;
        };
    }
}
