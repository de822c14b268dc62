package fifthform.simulator.tube;

/**
 * Crystals of one lump of fat at rest: forms II, IV and V as shares of the fat, and the number measure of V. Form VI is
 * left out, since it takes months.
 *
 * <p>The equations are those of the project's reduced crystal model without its stirring terms, written here a second time
 * and with the constants of {@link FatMake}. Mutable; one belongs to one node.
 */
final class Fat {
    private static final double STABLE_MELT = 30.4;
    private static final double STABLE_WIDTH = 0.75;
    private static final double BETA_PRIME_MELT = 26.0;
    private static final double BETA_PRIME_WIDTH = 0.65;
    private static final double ALPHA_MELT = 19.0;
    private static final double ALPHA_WIDTH = 0.80;
    private static final double STABLE_HEAT = 175;
    private static final double BETA_PRIME_HEAT = 145;
    private static final double ALPHA_HEAT = 110;

    private final FatMake make;
    private final double milkShift;
    private final double slow;
    private double alpha;
    private double betaPrime;
    private double stable;
    private final double number;

    Fat(FatMake make, double seed) {
        this.make = make;
        this.milkShift = 8.5 * StrictMath.log(1 - make.milkFatFraction());
        this.slow = 1 - 0.2 * Math.min(1, make.milkFatFraction() / 0.17);
        this.stable = seed;
        this.number = seed * make.seedsPerMass();
    }

    /** Goes on for a time at one temperature; answers with the heat set free, kJ per kg of fat. */
    double step(double celsius, double minutes) {
        double v = milkShift + make.stableShiftKelvin();
        double u = milkShift + make.unstableShiftKelvin();
        double solid = alpha + betaPrime + stable;
        double roomStable = room(solid, most(celsius, STABLE_MELT + v, STABLE_WIDTH));
        double roomBeta = room(solid, most(celsius, BETA_PRIME_MELT + u, BETA_PRIME_WIDTH));
        double roomAlpha = room(solid, most(celsius, ALPHA_MELT + u, ALPHA_WIDTH));

        double formedAlpha =
                slow * make.unstableGrowth() * 0.020 * alpha * square(cold(22.0 + u, celsius, 12)) * roomAlpha
                        + slow * make.nucleation() * 0.005 * onset(22.0 + u, celsius, 2) * roomAlpha;
        double formedBeta =
                slow * make.unstableGrowth() * 0.0050 * betaPrime * square(cold(29.2 + u, celsius, 12)) * roomBeta
                        + slow * make.nucleation() * 4.0e-4 * onset(29.2 + u, celsius, 3) * roomBeta;
        double surface = StrictMath.cbrt(number) * square(StrictMath.cbrt(stable));
        double formedStable = slow
                * make.stableGrowth()
                * 0.0130
                * surface
                * StrictMath.pow(cold(33.2 + v, celsius, 17), 2.4)
                * roomStable
                * stable
                / (stable + 1e-7);

        double meltedAlpha = melted(alpha, celsius, solid, ALPHA_MELT + u, ALPHA_WIDTH, 2.0, 99);
        double meltedBeta =
                melted(betaPrime, celsius, betaPrime + stable, BETA_PRIME_MELT + u, BETA_PRIME_WIDTH, 1.2, 99);
        double meltedStable = melted(stable, celsius, stable, STABLE_MELT + v, STABLE_WIDTH, 0.49, 33.8 + v);

        double alphaToBeta = alpha / (10 * StrictMath.exp(-(Math.min(celsius, 22) - 17.5) / 3.0));
        double betaToStable = betaPrime / (200 * StrictMath.exp(-(Math.min(celsius, 29) - 24.0) / 2.14));

        double dAlpha = formedAlpha - meltedAlpha - alphaToBeta;
        double dBeta = formedBeta - meltedBeta + alphaToBeta - betaToStable;
        double dStable = formedStable - meltedStable + betaToStable;
        alpha = Math.max(0, alpha + dAlpha * minutes);
        betaPrime = Math.max(0, betaPrime + dBeta * minutes);
        stable = Math.max(0, stable + dStable * minutes);
        return make.heat() * minutes * (ALPHA_HEAT * dAlpha + BETA_PRIME_HEAT * dBeta + STABLE_HEAT * dStable);
    }

    /** All solid fat, as a share. */
    double solid() {
        return alpha + betaPrime + stable;
    }

    private static double level(double celsius) {
        return Math.max(0.05, Math.min(0.95, 0.78 - 0.010 * (celsius - 20)));
    }

    private static double most(double celsius, double melt, double width) {
        double steps = Math.max(-60, Math.min(60, (celsius - melt) / width));
        return level(celsius) / (1 + StrictMath.exp(steps));
    }

    private static double room(double solid, double most) {
        return Math.max(0, 1 - solid / Math.max(most, 1e-9));
    }

    private static double cold(double below, double celsius, double most) {
        return Math.max(0, Math.min(most, below - celsius));
    }

    private static double onset(double below, double celsius, double kelvin) {
        double cold = below - celsius;
        return cold <= 0.2 ? 0 : StrictMath.exp(-square(kelvin / cold));
    }

    private static double melted(
            double form, double celsius, double solid, double melt, double width, double pace, double last) {
        if (form <= 0) return 0;
        double level = level(celsius);
        double share = Math.max(1e-12, Math.min(0.999999 * level, solid));
        double liquidus = Math.min(melt + width * StrictMath.log(level / share - 1), last);
        return form * Math.min(pace * square(Math.max(0, celsius - liquidus)), 12);
    }

    private static double square(double value) {
        return value * value;
    }
}
