package fifthform.simulator.rivals;

import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Luck;
import java.time.Duration;

/**
 * One way in which a known kitchen may stand, for an {@link Oracle}: the physics is the true one, the stirring a guess.
 *
 * @param state all temperatures
 * @param vigourFraction how it is stirred now
 * @param leftSeconds until that changes, s
 * @param wipesInSeconds until the bowl is wiped, s; negative where it is not
 * @param logWeight how well it fits the readings, to a constant
 * @param luck for what comes next
 */
record Guess(
        KitchenState state,
        double vigourFraction,
        double leftSeconds,
        double wipesInSeconds,
        double logWeight,
        Luck luck) {
    /** The middle of how the judges stir. */
    private static final double BOUT_SECONDS = 37;

    private static final double REST_SECONDS = 12;
    private static final double AFTER_A_MOVE_SECONDS = 35;
    private static final double WIPES_AFTER_SECONDS = 20;
    private static final double WIPES_FRACTION = 0.5;
    private static final double VIGOUR = 0.95;
    private static final double VIGOUR_SPREAD = 0.15;

    /** A little later, the bowl standing there. */
    Guess after(Kitchen kitchen, Spot spot, double share, Duration time) {
        double seconds = time.toMillis() / 1000.0;
        Guess moved = state.spot() == spot ? this : moved(spot, share);
        Guess stirring = moved.leftSeconds > 0 ? moved : moved.turned(share);
        boolean wipes = stirring.wipesInSeconds >= 0 && stirring.wipesInSeconds < seconds;
        Hands hands = new Hands(spot, stirring.vigourFraction, wipes ? Towel.WIPING : Towel.LEFT);
        return new Guess(
                kitchen.advance(stirring.state, hands, time),
                stirring.vigourFraction,
                stirring.leftSeconds - seconds,
                stirring.wipesInSeconds - seconds,
                stirring.logWeight,
                stirring.luck);
    }

    private Guess moved(Spot spot, double share) {
        boolean wipes = spot == Spot.TABLE && luck.uniform() < WIPES_FRACTION;
        Luck next = luck.after();
        double wipe = wipes ? WIPES_AFTER_SECONDS : -1;
        return new Guess(state, vigour(next, share), AFTER_A_MOVE_SECONDS, wipe, logWeight, next.after());
    }

    private Guess turned(double share) {
        Luck next = luck.after();
        boolean rests = vigourFraction > 0;
        double seconds = luck.exponential(rests ? REST_SECONDS : BOUT_SECONDS);
        double vigour = rests ? 0 : vigour(next, share);
        return new Guess(state, vigour, seconds, wipesInSeconds, logWeight, next.after());
    }

    private static double vigour(Luck luck, double share) {
        return share * Math.max(0, Math.min(1, VIGOUR + VIGOUR_SPREAD * luck.normal()));
    }

    Guess weighing(double newLogWeight) {
        return new Guess(state, vigourFraction, leftSeconds, wipesInSeconds, newLogWeight, luck);
    }

    /** The same with a luck of its own from now on. */
    Guess branch(int number) {
        return new Guess(state, vigourFraction, leftSeconds, wipesInSeconds, 0, luck.branch(number));
    }

    /** The highest bulk if it stands on the table from now on, °C. */
    double turnCelsius(Kitchen kitchen, double share, Duration step) {
        Guess guess = this;
        double highest = state.bulkCelsius();
        double sinceHighest = 0;
        for (double seconds = 0; seconds < 360; seconds += step.toMillis() / 1000.0) {
            guess = guess.after(kitchen, Spot.TABLE, share, step);
            double celsius = guess.state.bulkCelsius();
            if (celsius > highest) {
                highest = celsius;
                sinceHighest = 0;
            } else {
                sinceHighest += step.toMillis() / 1000.0;
                if (sinceHighest >= 30 && highest - celsius > 0.01) break;
            }
        }
        return highest;
    }
}
