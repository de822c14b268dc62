package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * A pot or basin of water, well mixed.
 *
 * @param waterKilograms mass of water, 0.05 to 50 kg
 * @param potJoulesPerKelvin heat capacity of the vessel itself, 0 to 5000 J/K
 * @param contactWattsPerSquareMetreKelvin from the water to the bowl, 10 to 1500 W/m²K; about 550 for water by free
 *     convection, about 120 for moist air over hot water (both guesses, no source)
 * @param lossWattsPerKelvin to the room, 0 to 20 W/K
 * @param burnerWatts strength of the burner under it, 0 (none) to 5000 W
 * @param heldAtCelsius where the burner is turned down, 0 to 100 °C; without meaning where there is no burner
 */
public record Vessel(
        double waterKilograms,
        double potJoulesPerKelvin,
        double contactWattsPerSquareMetreKelvin,
        double lossWattsPerKelvin,
        double burnerWatts,
        double heldAtCelsius) {
    /** The burner goes from nothing to all over this span, K: a hand on the knob, not a switch. Our own choice. */
    private static final double KNOB_SPAN_KELVIN = 2;

    public Vessel {
        Require.within(waterKilograms, 0.05, 50, "waterKilograms");
        Require.within(potJoulesPerKelvin, 0, 5000, "potJoulesPerKelvin");
        Require.within(contactWattsPerSquareMetreKelvin, 10, 1500, "contactWattsPerSquareMetreKelvin");
        Require.within(lossWattsPerKelvin, 0, 20, "lossWattsPerKelvin");
        Require.within(burnerWatts, 0, 5000, "burnerWatts");
        Require.within(heldAtCelsius, 0, 100, "heldAtCelsius");
    }

    /** A vessel off the heat. */
    public static Vessel offTheHeat(double waterKilograms, double potJoulesPerKelvin, double contact, double loss) {
        return new Vessel(waterKilograms, potJoulesPerKelvin, contact, loss, 0, 0);
    }

    double joulesPerKelvin() {
        return waterKilograms * Water.JOULES_PER_KILOGRAM_KELVIN + potJoulesPerKelvin;
    }

    double burnerWattsAt(double celsius) {
        double share = (heldAtCelsius - celsius) / KNOB_SPAN_KELVIN;
        return burnerWatts * Math.max(0, Math.min(1, share));
    }
}
