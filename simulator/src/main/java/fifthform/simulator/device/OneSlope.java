package fifthform.simulator.device;

import fifthform.curves.thermocouple.ThermocoupleType;

/**
 * What a converter makes of its EMF that takes one slope for the whole curve: {@code junction + (E(tip) − E(junction)) / S}.
 * Near 30 °C a type K thermocouple is wrong by some hundredths of the distance to the junction.
 */
final class OneSlope {
    private OneSlope() {}

    static double celsius(
            ThermocoupleType type, double microvoltsPerKelvin, double tipCelsius, double junctionCelsius) {
        double microvolts = 1000 * (type.emfMillivolts(tipCelsius) - type.emfMillivolts(junctionCelsius));
        return junctionCelsius + microvolts / microvoltsPerKelvin;
    }
}
