package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Setup;
import java.util.Optional;

/**
 * How far this bowl coasts, as one number with its uncertainty.
 *
 * <p>Two bodies: the chocolate follows its wall, {@code dC/dt = (W − C)/τc}, and away from the water the wall follows
 * the chocolate, {@code dW/dt = −(W − C)/τw}. Then {@code W − C} dies away with the time constant
 * {@code L = τc τw/(τc + τw)} and the chocolate goes on by {@code (W − C) τw/(τc + τw) = L · dC/dt}. So one time, the
 * coast time L, says both how far (kelvin of coast per kelvin per second of rate) and how soon. Source: our own
 * derivation from two lumped heat balances; the energy check {@code (cC C + cW W)/(cC + cW)} is in the tests.
 *
 * @param logSeconds natural logarithm of the coast time in seconds
 * @param logSpread standard deviation of that logarithm
 * @param liftsSeen lifts it rests on; 0 for a guess from the material
 */
public record Coast(double logSeconds, double logSpread, int liftsSeen) {
    /** How much a bowl may have changed since the last lift: other amount of stirring. Own choice. */
    private static final double DRIFT = 0.08;

    /** And since the last batch: another day's hands, pot and clinging water; seen in simulated home kitchens. */
    private static final double DRIFT_BETWEEN_BATCHES = 0.15;

    /**
     * A lift further away from what was expected than so many of its spreads counts as if it were no further: bowls do
     * not change like that, but people forget to stir. Own choice; see {@link Lesson} for what it was tried on. The first
     * lifts of a bowl may surprise as they like: before them its material is all that is known.
     */
    private static final double SURPRISE = 1.5;

    private static final int KNOWN_LIFTS = 2;

    /** As wide as the guesses from a material. */
    private static final double ANOTHER_BOWL_SPREAD = 0.5;

    private static final double SHORTEST_SECONDS = 3;
    private static final double LONGEST_SECONDS = 400;

    /** After this many coast times less than 2 % of the coast is left (e⁻⁴). */
    private static final double DIED_AWAY_COAST_TIMES = 4;

    private static final double MOST_COAST_TIMES = 6;

    public Coast {
        Require.finite(logSeconds, "logSeconds");
        Require.within(logSpread, 0, 3, "logSpread");
    }

    /** What is known before the first lift of this batch. */
    public static Coast before(Setup setup) {
        return before(setup.bowl());
    }

    /** What is known of a bowl before a batch: what it taught earlier, else its material. */
    public static Coast before(Bowl bowl) {
        Optional<LearnedCoast> learned = bowl.learned();
        if (learned.isPresent()) {
            LearnedCoast l = learned.get();
            double spread = Math.sqrt(l.logSpread() * l.logSpread() + DRIFT_BETWEEN_BATCHES * DRIFT_BETWEEN_BATCHES);
            return new Coast(StrictMath.log(l.coastSeconds()), spread, l.liftsSeen());
        }
        return guess(bowl.material());
    }

    /**
     * Heat in the wall alone gives about 21 s for a steel and 65 s for a glass bowl (computed for wall masses and film
     * coefficients from handbooks, see the tests); clinging water, the layer at the wall and the filter's own delay add
     * about 15 s. The spreads are guesses.
     */
    private static Coast guess(BowlMaterial material) {
        return switch (material) {
            case STEEL -> new Coast(StrictMath.log(36), 0.45, 0);
            case ALUMINIUM -> new Coast(StrictMath.log(36), 0.45, 0);
            case GLASS -> new Coast(StrictMath.log(80), 0.45, 0);
            case PLASTIC -> new Coast(StrictMath.log(70), 0.5, 0);
            case UNKNOWN -> new Coast(StrictMath.log(45), 0.6, 0);
        };
    }

    /** This as a batch's legacy; empty while it is only a guess from the material. */
    Optional<LearnedCoast> learned() {
        return liftsSeen == 0 ? Optional.empty() : Optional.of(new LearnedCoast(seconds(), logSpread, liftsSeen));
    }

    /** The coast time, s. */
    public double seconds() {
        return StrictMath.exp(logSeconds);
    }

    /**
     * Knowledge after a lift whose coast was seen.
     *
     * @param observedSeconds the coast time that would explain it, s
     * @param observedSpread standard deviation of its logarithm
     */
    Coast learned(double observedSeconds, double observedSpread) {
        double observed = StrictMath.log(Math.min(LONGEST_SECONDS, Math.max(SHORTEST_SECONDS, observedSeconds)));
        double prior = logSpread * logSpread + DRIFT * DRIFT;
        double variance = prior + observedSpread * observedSpread;
        double gain = prior / variance;
        double most = liftsSeen < KNOWN_LIFTS ? Double.MAX_VALUE : SURPRISE * Math.sqrt(variance);
        double surprise = Math.min(most, Math.max(-most, observed - logSeconds));
        return new Coast(logSeconds + gain * surprise, Math.sqrt((1 - gain) * prior), liftsSeen + 1);
    }

    /** The same figure where it turns out to be another bowl's. */
    Coast ofAnotherBowl() {
        return new Coast(logSeconds, Math.max(logSpread, ANOTHER_BOWL_SPREAD), liftsSeen);
    }

    /** How far the chocolate still goes, K, if heat flows in at {@code inflow} K/s and {@code loss} K/s are lost. */
    static double turnKelvin(double coastSeconds, double inflow, double loss) {
        double t = turnSeconds(coastSeconds, inflow, loss);
        return inflow * coastSeconds * -StrictMath.expm1(-t / coastSeconds) - loss * t;
    }

    /**
     * When it turns, s from now; 0 where it turns at once. Where the loss works against the coast that is where they are
     * equal. Where both go the same way nothing turns: the coast counts until it has died away to the rate of the loss,
     * so that a bowl which only loses heat to the room has no turning point ahead.
     */
    static double turnSeconds(double coastSeconds, double inflow, double loss) {
        double times = Math.abs(inflow / loss);
        if (!(times > 1)) return 0;
        double most = inflow * loss > 0 ? MOST_COAST_TIMES : DIED_AWAY_COAST_TIMES;
        return coastSeconds * Math.min(most, StrictMath.log(times));
    }
}
