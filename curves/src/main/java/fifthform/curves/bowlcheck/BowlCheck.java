package fifthform.curves.bowlcheck;

import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.Usual;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The statistics: how much better another bowl explains what this batch showed than the known one does.
 *
 * <p>A figure of a bowl is taken as normal with unknown mean and scatter; after n batches the next one follows Student's
 * distribution with ν₀ + n − 1 degrees of freedom about their mean, scaled by s²(1 + 1/n), where
 * s² = (ν₀ s₀² + squares)/(ν₀ + n − 1) mixes a usual scatter with that of this bowl and these hands (conjugate normal
 * model, textbook; from memory). Other bowls move the figures by known amounts; the best of them is held against "the
 * same bowl" by the logarithm of the likelihood ratio.
 */
final class BowlCheck {
    /** How many batches the usual scatter counts for. Own choice. */
    private static final double USUAL_WEIGHT = 4;

    /** Scatter of one bowl's figures from batch to batch, in simulated home kitchens with a maker who stirs. */
    private static final double TURN_SCATTER = 0.12;

    private static final double PULL_SCATTER = 0.14;

    /** Tap water is 3 K warmer or cooler from day to day, of 20 K or so. */
    private static final double PULL_GUESSED_SCATTER = 0.2;

    /** As the log of the likelihood ratio: hands that stir badly for once must not count as another bowl. */
    private static final double ENOUGH = 2.7;

    /** One batch alone says nothing of how these hands scatter. */
    private static final int FEWEST_BATCHES = 2;

    /**
     * Another bowl, by how it moves the logarithms of the figures.
     *
     * @param turn of the time to turn
     * @param pull of the fall per kelvin
     */
    private record Shift(OtherBowl kind, double turn, double pull) {}

    /** Seen in the simulator: twice or half the amount; a wall of glass for one of steel or the other way round. */
    private static final Shift[] SHIFTS = {
        new Shift(OtherBowl.HEAVIER, 0.13, -0.33),
        new Shift(OtherBowl.LIGHTER, -0.13, 0.33),
        new Shift(OtherBowl.HEAVIER, 0.6, -0.5),
        new Shift(OtherBowl.LIGHTER, -0.6, 0.5)
    };

    private BowlCheck() {}

    /** Which other bowl this seems to be, if it is plain enough. */
    static Optional<OtherBowl> judge(BowlAnswers usual, Answer answer) {
        Optional<OtherBowl> best = Optional.empty();
        double most = ENOUGH;
        for (Shift shift : SHIFTS) {
            double odds = logOdds(usual.turn(), TURN_SCATTER, answer.turn(), shift.turn())
                    + logOdds(usual.pull(), PULL_SCATTER, answer.pull(), shift.pull())
                    + logOdds(usual.pullGuessed(), PULL_GUESSED_SCATTER, answer.pullGuessed(), shift.pull());
            if (odds <= most) continue;
            most = odds;
            best = Optional.of(shift.kind());
        }
        return best;
    }

    /** What this figure says for a shift against none; 0 where it says nothing. */
    static double logOdds(Usual usual, double usualScatter, OptionalDouble figure, double shift) {
        if (figure.isEmpty() || usual.batches() < FEWEST_BATCHES) return 0;
        double freedom = USUAL_WEIGHT + usual.batches() - 1;
        double scatter = (USUAL_WEIGHT * usualScatter * usualScatter + usual.squares()) / freedom;
        double variance = scatter * (1 + 1.0 / usual.batches());
        double away = figure.getAsDouble() - usual.mean();
        double shifted = away - shift;
        return (freedom + 1)
                / 2
                * (StrictMath.log1p(away * away / (freedom * variance))
                        - StrictMath.log1p(shifted * shifted / (freedom * variance)));
    }
}
