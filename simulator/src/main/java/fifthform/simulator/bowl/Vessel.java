package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * A pot or basin of water, well mixed.
 *
 * @param waterKilograms mass of water at the start, 0.05 to 50 kg
 * @param potJoulesPerKelvin heat capacity of the vessel itself, 0 to 5000 J/K
 * @param contactWattsPerSquareMetreKelvin from the water to the bowl, 10 to 1500 W/m²K; about 550 for water by free
 *     convection (guess, no source)
 * @param lossWattsPerKelvin to the room through walls and by convection, 0 to 20 W/K
 * @param burnerWatts strength of the burner under it, 0 (none) to 5000 W
 * @param heldAtCelsius where the burner is turned down, 0 to 110 °C, from 103 on it never is; without meaning
 *     where there is no burner
 * @param openSquareMetres surface of the water that is open to the room while no bowl sits on it, 0 (a lid) to 0.3 m²
 * @param dippedFraction how much of the bowl's wetted area stands in the water, 0 to 1; steam heats the rest
 * @param potToWaterWattsPerKelvin from the metal to the water, 10 to 500 W/K, or 0 where both are one
 */
public record Vessel(
        double waterKilograms,
        double potJoulesPerKelvin,
        double contactWattsPerSquareMetreKelvin,
        double lossWattsPerKelvin,
        double burnerWatts,
        double heldAtCelsius,
        double openSquareMetres,
        double dippedFraction,
        double potToWaterWattsPerKelvin) {
    /** The burner goes from nothing to all over this span, K: a hand on the knob, not a switch. Our own choice. */
    private static final double KNOB_SPAN_KELVIN = 2;

    public Vessel {
        Require.within(waterKilograms, 0.05, 50, "waterKilograms");
        Require.within(potJoulesPerKelvin, 0, 5000, "potJoulesPerKelvin");
        Require.within(contactWattsPerSquareMetreKelvin, 10, 1500, "contactWattsPerSquareMetreKelvin");
        Require.within(lossWattsPerKelvin, 0, 20, "lossWattsPerKelvin");
        Require.within(burnerWatts, 0, 5000, "burnerWatts");
        Require.within(heldAtCelsius, 0, 110, "heldAtCelsius");
        Require.within(openSquareMetres, 0, 0.3, "openSquareMetres");
        Require.within(dippedFraction, 0, 1, "dippedFraction");
        if (potToWaterWattsPerKelvin != 0) {
            Require.within(potToWaterWattsPerKelvin, 10, 500, "potToWaterWattsPerKelvin");
            Require.within(potJoulesPerKelvin, 50, 5000, "potJoulesPerKelvin of a pot with its own temperature");
        }
    }

    /** Covered, the bowl wholly in the water, pot and water as one. */
    public Vessel(
            double waterKilograms,
            double potJoulesPerKelvin,
            double contactWattsPerSquareMetreKelvin,
            double lossWattsPerKelvin,
            double burnerWatts,
            double heldAtCelsius) {
        this(
                waterKilograms,
                potJoulesPerKelvin,
                contactWattsPerSquareMetreKelvin,
                lossWattsPerKelvin,
                burnerWatts,
                heldAtCelsius,
                0,
                1,
                0);
    }

    /** A covered vessel off the heat. */
    public static Vessel offTheHeat(double waterKilograms, double potJoulesPerKelvin, double contact, double loss) {
        return new Vessel(waterKilograms, potJoulesPerKelvin, contact, loss, 0, 0);
    }

    /** The same with so much of its water open to the room. */
    public Vessel open(double squareMetres) {
        return new Vessel(
                waterKilograms,
                potJoulesPerKelvin,
                contactWattsPerSquareMetreKelvin,
                lossWattsPerKelvin,
                burnerWatts,
                heldAtCelsius,
                squareMetres,
                dippedFraction,
                potToWaterWattsPerKelvin);
    }

    /** Whether the pot's metal has a temperature of its own. */
    boolean thickPot() {
        return potToWaterWattsPerKelvin > 0;
    }

    /** Of what has the water's temperature, J/K. */
    double joulesPerKelvin(double waterKilogramsNow) {
        return waterKilogramsNow * Water.JOULES_PER_KILOGRAM_KELVIN + (thickPot() ? 0 : potJoulesPerKelvin);
    }

    double burnerWattsAt(double celsius) {
        double share = (heldAtCelsius - celsius) / KNOB_SPAN_KELVIN;
        return burnerWatts * Math.max(0, Math.min(1, share));
    }
}
