package fifthform.simulator.bowl;

import fifthform.curves.check.Require;

/**
 * Crystals that melt once, spread evenly over the chocolate's melting range, as soon as it is warm enough, and never form
 * again: the heat of the few that do while it is tempered is left out.
 *
 * @param solidFraction of the crystals that have not melted yet, 0 to 1
 */
public record Melting(double solidFraction) implements Crystals {
    /** Nothing has melted. */
    public static final Melting SOLID = new Melting(1);

    /** All has melted. */
    public static final Melting MELTED = new Melting(0);

    public Melting {
        Require.within(solidFraction, 0, 1, "solidFraction");
    }

    @Override
    public double boundJoulesPerKilogram(Chocolate chocolate) {
        return chocolate.latentJoulesPerKilogram() * solidFraction;
    }

    @Override
    public Melting solidAlike() {
        return SOLID;
    }

    @Override
    public Crystals settled(Chocolate chocolate, double joulesPerKilogram, double seconds, double vigourFraction) {
        if (solidFraction == 0) return this;
        double celsius = Chocolate.celsiusOfSensible(joulesPerKilogram + boundJoulesPerKilogram(chocolate));
        if (chocolate.unmeltedAt(celsius) >= solidFraction) return this;
        double after = Math.min(solidFraction, chocolate.unmeltedAt(chocolate.celsiusWhileMelting(joulesPerKilogram)));
        return after == 0 ? MELTED : new Melting(after);
    }

    @Override
    public Crystals mixedWith(Crystals other, double otherFraction) {
        if (other.solidFraction() == solidFraction) return this;
        return new Melting(solidFraction + otherFraction * (other.solidFraction() - solidFraction));
    }
}
