package fifthform.curves.forecast;

import fifthform.curves.setup.Setup;

/** How fast a bowl on the table drifts towards the temperature of the kitchen. */
final class RoomLoss {
    /**
     * Rate of loss of 1 kg, 10.5 K above the room, K/s: 0.25 K/min. Computed for a lumped bowl with 10 W/m²K to still air
     * (0.43 K/min at 0.2 kg, 0.15 at 5 kg); the film coefficient is a textbook value from memory.
     */
    private static final double LOSS_AT_REFERENCE = 0.25 / 60;

    private static final double REFERENCE_KELVIN = 10.5;
    private static final double REFERENCE_GRAMS = 1000;
    private static final double USUAL_ROOM_CELSIUS = 21;

    private RoomLoss() {}

    /** Rate, K/s; positive where the chocolate is warmer than the room. Surface per mass goes with mass to the −1/3. */
    static double kelvinPerSecond(Setup setup, double chocolateCelsius) {
        double roomCelsius = setup.roomCelsius().orElse(USUAL_ROOM_CELSIUS);
        double size =
                StrictMath.cbrt(REFERENCE_GRAMS / setup.bowl().amountGrams().orElse(REFERENCE_GRAMS));
        return LOSS_AT_REFERENCE * size * (chocolateCelsius - roomCelsius) / REFERENCE_KELVIN;
    }
}
