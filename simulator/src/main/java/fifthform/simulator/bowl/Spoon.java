package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * What the chocolate is stirred with. It stays in the bowl and takes part in every change.
 *
 * @param joulesPerKelvin heat it takes up, 2 to 200 J/K; a 40 g steel spoon 20, a silicone spatula about 60
 * @param toChocolateWattsPerKelvin from the chocolate, 0 to 5 W/K
 * @param toAirWattsPerKelvin from its handle to the room, 0 to 2 W/K
 */
public record Spoon(double joulesPerKelvin, double toChocolateWattsPerKelvin, double toAirWattsPerKelvin) {
    /** A steel spoon: 40 g at 500 J/kgK; 50 cm² at 100 W/m²K inside, 60 cm² at 10 W/m²K outside. Guesses (no source). */
    public static final Spoon STEEL = new Spoon(20, 0.5, 0.06);

    /** None that matters; for comparing with closed solutions. */
    public static final Spoon NONE = new Spoon(2, 0, 0);

    public Spoon {
        Require.within(joulesPerKelvin, 2, 200, "joulesPerKelvin");
        Require.within(toChocolateWattsPerKelvin, 0, 5, "toChocolateWattsPerKelvin");
        Require.within(toAirWattsPerKelvin, 0, 2, "toAirWattsPerKelvin");
    }
}
