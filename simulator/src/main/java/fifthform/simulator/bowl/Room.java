package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * The air around the bowl.
 *
 * @param celsius of the kitchen, 0 to 45 °C; its walls are as warm
 * @param humidityFraction relative humidity, 0 to 1
 * @param fridgeCelsius inside the fridge, −5 to 20 °C
 */
public record Room(double celsius, double humidityFraction, double fridgeCelsius) {
    public Room {
        Require.within(celsius, 0, 45, "roomCelsius");
        Require.within(humidityFraction, 0, 1, "humidityFraction");
        Require.within(fridgeCelsius, -5, 20, "fridgeCelsius");
    }

    /** Half humid, and a fridge at 5 °C. Common practice, no source. */
    public static Room at(double celsius) {
        return new Room(celsius, 0.5, 5);
    }

    /** Water in the air, kg/m³. */
    double vapour() {
        return humidityFraction * Vapour.saturated(celsius);
    }
}
