package fifthform.curves.proof;

import fifthform.curves.check.Require;

/**
 * What the cooling of melted chocolate tells of a cup with its probe.
 *
 * @param tauMinutes time constant, {@value #SHORTEST_MINUTES} to {@value #LONGEST_MINUTES} min
 * @param axisExcess how far the axis stays behind the mean: the line of {@link TauFit} drawn back to the dip, over the
 *     excess above the bath that the sample had there; 1 where all of it cools alike, 1.6 on the axis of a long cylinder
 *     whose surface is at the bath's temperature at once (one-term solution of conduction, from memory), 1 to 1.6
 */
public record CupTraits(double tauMinutes, double axisExcess) {
    static final double SHORTEST_MINUTES = 1;
    static final double LONGEST_MINUTES = 10;
    static final double MOST_EXCESS = 1.6;

    public CupTraits {
        Require.within(tauMinutes, SHORTEST_MINUTES, LONGEST_MINUTES, "tauMinutes");
        Require.within(axisExcess, 1, MOST_EXCESS, "axisExcess");
    }

    /** The reference tube of the project's crystal model: one lump, 3.5 min. */
    public static final CupTraits REFERENCE = new CupTraits(3.5, 1);

    /**
     * A thin metal cup that was never calibrated. Time constant of a half sphere that conduction limits, 3.9 min at 12 g,
     * with the square of its radius (computed in the crystal model, section 10); the excess lies amid those of our
     * simulated cups.
     *
     * @param grams mass of the sample, 4 to 30 g
     */
    public static CupTraits ofMass(double grams) {
        Require.within(grams, 4, 30, "grams");
        return new CupTraits(3.9 * StrictMath.pow(grams / 12, 2.0 / 3), 1.15);
    }
}
