package fifthform.curves.plan;

/**
 * What solid chocolate does to a melted bowl: it cools, and part of it melts.
 *
 * <p>With {@code s} the seed's share of the whole, {@code u} the share that is still solid at the end, {@code L} the latent
 * heat and {@code b} the bowl's heat capacity for each kg of the whole:
 * {@code (1 − s)(h(T1) − h(Tw)) + b (T1 − Tw) = s · 1590 (Tw − Ts) + (s − u) L}. Source: a heat balance with the handbook
 * values of {@link Heat}; no heat is lost to the room, which makes the seed seem to melt more than it will.
 *
 * @param latentJoulesPerKilogram of the seed, 1 to 200 000 J/kg
 * @param bowlJoulesPerKilogramKelvin the bowl's heat capacity for each kg of melted chocolate and seed, J/kgK; 0 leaves it out
 * @param seedCelsius how warm the seed is when it is added, °C
 */
public record SeedHeat(double latentJoulesPerKilogram, double bowlJoulesPerKilogramKelvin, double seedCelsius) {
    /** The melt's temperature, °C, from which this share is still solid as asked when the mix has come to {@code toCelsius}. */
    public double meltCelsius(double share, double stillSolidShare, double toCelsius) {
        double asked = share * warming(toCelsius) + (share - stillSolidShare) * latentJoulesPerKilogram;
        double melted = 1 - share;
        double b = bowlJoulesPerKilogramKelvin;
        if (b == 0) return Heat.chocolateCelsius(Heat.chocolate(toCelsius) + asked / melted);
        // Below the knee in one step; above it the chocolate's own heat capacity is another.
        double below = toCelsius + asked / (melted * Heat.chocolateCapacity(toCelsius) + b);
        double knee = 40;
        if (below <= knee) return below;
        double toKnee = melted * (Heat.chocolate(knee) - Heat.chocolate(toCelsius)) + b * (knee - toCelsius);
        return knee + (asked - toKnee) / (melted * Heat.chocolateCapacity(knee + 1) + b);
    }

    /** The seed's share of the whole that leaves {@code stillSolidShare} solid at {@code toCelsius}, from this melt. */
    public double share(double meltCelsius, double stillSolidShare, double toCelsius) {
        double given = Heat.chocolate(meltCelsius) - Heat.chocolate(toCelsius);
        double fromBowl = bowlJoulesPerKilogramKelvin * (meltCelsius - toCelsius);
        return (given + fromBowl + stillSolidShare * latentJoulesPerKilogram)
                / (given + warming(toCelsius) + latentJoulesPerKilogram);
    }

    /** The share of the whole still solid at {@code toCelsius}; negative where all melts and the mix is warmer than that. */
    public double stillSolidShare(double share, double meltCelsius, double toCelsius) {
        double given = (1 - share) * (Heat.chocolate(meltCelsius) - Heat.chocolate(toCelsius))
                + bowlJoulesPerKilogramKelvin * (meltCelsius - toCelsius);
        return share - (given - share * warming(toCelsius)) / latentJoulesPerKilogram;
    }

    private double warming(double toCelsius) {
        return Heat.CHOCOLATE_JOULES_PER_KILOGRAM_KELVIN * (toCelsius - seedCelsius);
    }
}
