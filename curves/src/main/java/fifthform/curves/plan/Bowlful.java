package fifthform.curves.plan;

import fifthform.curves.check.Require;

/**
 * Melted chocolate in its bowl, both at one temperature.
 *
 * @param chocolateKilograms 0.01 to 30 kg
 * @param fatFraction all fat, as a fraction of the chocolate's mass
 * @param bowlKilograms the empty bowl, 0 to 20 kg
 * @param bowlJoulesPerKilogramKelvin heat capacity of its material, 100 to 3000 J/kgK
 */
public record Bowlful(
        double chocolateKilograms, double fatFraction, double bowlKilograms, double bowlJoulesPerKilogramKelvin) {
    public Bowlful {
        Require.within(chocolateKilograms, 0.01, 30, "chocolateKilograms");
        Require.within(fatFraction, 0, 1, "fatFraction");
        Require.within(bowlKilograms, 0, 20, "bowlKilograms");
        Require.within(bowlJoulesPerKilogramKelvin, 100, 3000, "bowlJoulesPerKilogramKelvin");
    }

    /**
     * Heat given to a bath on the way from one temperature to another, J; negative where it is taken.
     *
     * @param solidFractionOfFat crystals that form on the way, as a fraction of the fat; negative where they melt
     */
    public double joulesGiven(double fromCelsius, double toCelsius, double solidFractionOfFat) {
        return chocolateKilograms * (Heat.chocolate(fromCelsius) - Heat.chocolate(toCelsius))
                + bowlJoulesPerKelvin() * (fromCelsius - toCelsius)
                + crystalJoules(solidFractionOfFat);
    }

    /** Heat of crystals that form, J. */
    double crystalJoules(double solidFractionOfFat) {
        return chocolateKilograms * fatFraction * solidFractionOfFat * Heat.CRYSTAL_JOULES_PER_KILOGRAM_SOLID;
    }

    /** Chocolate and bowl at this temperature, J/K. */
    public double joulesPerKelvin(double celsius) {
        return chocolateKilograms * Heat.chocolateCapacity(celsius) + bowlJoulesPerKelvin();
    }

    double bowlJoulesPerKelvin() {
        return bowlKilograms * bowlJoulesPerKilogramKelvin;
    }
}
