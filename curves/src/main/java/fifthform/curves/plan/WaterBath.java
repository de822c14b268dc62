package fifthform.curves.plan;

import fifthform.curves.check.Require;

/**
 * Water in a pan off the heat, both at one temperature.
 *
 * @param waterKilograms above 0, at most 100 kg
 * @param celsius 0 to 100 °C
 * @param panKilograms the empty pan, 0 to 20 kg
 * @param panJoulesPerKilogramKelvin heat capacity of its material, 0 to 3000 J/kgK
 */
public record WaterBath(double waterKilograms, double celsius, double panKilograms, double panJoulesPerKilogramKelvin) {
    public WaterBath {
        Require.within(waterKilograms, 1e-6, 100, "waterKilograms");
        Require.within(celsius, 0, 100, "celsius");
        Require.within(panKilograms, 0, 20, "panKilograms");
        Require.within(panJoulesPerKilogramKelvin, 0, 3000, "panJoulesPerKilogramKelvin");
    }

    /** Water and pan, J/K. */
    public double joulesPerKelvin() {
        return waterKilograms * Heat.WATER_JOULES_PER_KILOGRAM_KELVIN + panJoulesPerKelvin();
    }

    double panJoulesPerKelvin() {
        return panKilograms * panJoulesPerKilogramKelvin;
    }
}
