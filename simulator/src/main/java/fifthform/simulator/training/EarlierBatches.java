package fifthform.simulator.training;

import fifthform.curves.setup.LearnedCoast;
import fifthform.simulator.bench.WhatIf;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.KitchenState.Baths;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Dice;
import fifthform.simulator.maker.Luck;
import java.time.Duration;
import java.util.Optional;

/**
 * What earlier batches of the same bowl and amount have taught, over other water: each lift's coast is simulated, its
 * coast time falsified as the engine was seen to falsify it, and all are weighed as the engine weighs them.
 * The engine itself is not asked, since its own answers come from the weights that are trained here.
 */
final class EarlierBatches {
    private static final double KNOWN_SHARE = 0.45;
    private static final int MOST_BATCHES = 4;

    /** As the engine begins with a bowl of unknown material, and what it takes a lift for; {@code forecast.Coast}. */
    private static final double USUAL_SECONDS = 45;

    private static final double USUAL_SPREAD = 0.6;
    private static final double DRIFT = 0.08;
    private static final double TOLD_SPREAD = 0.2;
    private static final double INFERRED_SPREAD = 0.35;
    private static final double TEACHING_KELVIN_PER_SECOND = 0.4 / 60;
    private static final double TEACHING_KELVIN = 0.08;
    private static final double MOST_COAST_TIMES = 4;

    /**
     * By how much the engine was off after one batch, as a logarithm: never far above, often far below. Measured with
     * {@code LearnedBench} on 150 training kitchens (mean -0.71, median -0.43, 5 and 95 % points -2.4 and 0.18), where its
     * own spread said 0.22. That was before coasts were learned from the steady curve; one bowl in five is drawn as off still.
     * With the first weights, cut short: 63 of 100 kitchens taught, mean -0.55, median -0.34, 5 and 95 % points -1.86 and
     * 0.33, own spread 0.27; to be measured again with whole ones before this share is changed.
     */
    private static final double OFF_SHARE = 0.2;

    private static final double OFF_ABOVE = 0.3;
    private static final double OFF_BELOW_MEAN = 0.95;

    private static final Duration LOOK = Duration.ofSeconds(2);
    private static final Duration SHORTEST_STAY = Duration.ofSeconds(20);
    private static final Duration LONGEST_STAY = Duration.ofMinutes(4);

    private final Kitchen kitchen;
    private final double vigour;
    private final double lowCelsius;
    private final Dice dice;
    private double logSeconds = StrictMath.log(USUAL_SECONDS);
    private double variance = USUAL_SPREAD * USUAL_SPREAD;
    private int lifts;

    EarlierBatches(Kitchen kitchen, double vigour, double lowCelsius, Luck luck) {
        this.kitchen = kitchen;
        this.vigour = vigour;
        this.lowCelsius = lowCelsius;
        dice = new Dice(luck);
    }

    /** Empty where nobody has used this bowl before, or nothing was learned of it. */
    Optional<LearnedCoast> learned() {
        if (!dice.happens(KNOWN_SHARE)) return Optional.empty();
        int batches = 1 + dice.among(MOST_BATCHES);
        double below = -OFF_BELOW_MEAN * StrictMath.log(1 - dice.between(0, 1));
        double off = dice.happens(OFF_SHARE) ? OFF_ABOVE - below : 0;
        for (int batch = 0; batch < batches; batch++) {
            double spread = dice.happens(0.5) ? TOLD_SPREAD : INFERRED_SPREAD;
            int dips = 1 + dice.among(2);
            for (int dip = 0; dip < dips; dip++) {
                double error = off + spread * dice.normal();
                double seconds = coastSeconds(dice.logBetween(36, 70), lowCelsius + dice.between(-1.5, 1.5));
                if (seconds > 0) learn(StrictMath.log(seconds) + error, spread);
            }
        }
        return known();
    }

    /** What twelve lifts without any error would teach; for holding the engine's learning against. */
    static Optional<LearnedCoast> exact(Kitchen kitchen, double vigour, double lowCelsius) {
        EarlierBatches batches = new EarlierBatches(kitchen, vigour, lowCelsius, new Luck(1));
        for (int dip = 0; dip < 12; dip++) {
            double seconds = batches.coastSeconds(batches.dice.logBetween(36, 70), lowCelsius + 0.5);
            if (seconds > 0) batches.learn(StrictMath.log(seconds), TOLD_SPREAD);
        }
        return batches.known();
    }

    private Optional<LearnedCoast> known() {
        if (lifts == 0) return Optional.empty();
        double seconds = Math.min(600, Math.max(1, StrictMath.exp(logSeconds)));
        return Optional.of(new LearnedCoast(seconds, Math.sqrt(variance), lifts));
    }

    private void learn(double observed, double spread) {
        double prior = variance + DRIFT * DRIFT;
        double gain = prior / (prior + spread * spread);
        logSeconds += gain * (observed - logSeconds);
        variance = (1 - gain) * prior;
        lifts++;
    }

    /** The coast time of one lift at this temperature, s; 0 where it teaches nothing. */
    private double coastSeconds(double bathCelsius, double liftedCelsius) {
        KitchenState state =
                KitchenState.melted(lowCelsius - dice.between(2.5, 4.5), new Baths(bathCelsius, bathCelsius, 16));
        Hands warming = new Hands(Spot.WARM_BATH, vigour, Towel.LEFT);
        double before = state.bulkCelsius();
        while (state.bulkCelsius() < liftedCelsius && state.elapsed().compareTo(LONGEST_STAY) < 0) {
            before = state.bulkCelsius();
            state = kitchen.advance(state, warming, LOOK);
        }
        double rate = (state.bulkCelsius() - before) / LOOK.toSeconds();
        double turn = new WhatIf(kitchen, LOOK).ifLifted(state, warming, vigour).celsius();
        double coast = turn - state.bulkCelsius();
        boolean teaches = state.elapsed().compareTo(SHORTEST_STAY) >= 0
                && rate >= TEACHING_KELVIN_PER_SECOND
                && coast >= TEACHING_KELVIN;
        return teaches ? coast / ofOneSecond(rate, lossKelvinPerSecond(turn)) : 0;
    }

    /** The coast of a bowl with a coast time of 1 s; the formula of {@code forecast.Coast}. */
    private static double ofOneSecond(double rate, double loss) {
        double inflow = rate + loss;
        double times = loss > 0 ? Math.min(MOST_COAST_TIMES, StrictMath.log(inflow / loss)) : MOST_COAST_TIMES;
        return Math.max(1e-4, inflow * -StrictMath.expm1(-times) - loss * times);
    }

    private double lossKelvinPerSecond(double celsius) {
        KitchenState rest = KitchenState.melted(celsius, new Baths(celsius, celsius, celsius));
        Duration minute = Duration.ofMinutes(1);
        double after = kitchen.advance(rest, new Hands(Spot.TABLE, vigour, Towel.LEFT), minute)
                .bulkCelsius();
        return (celsius - after) / minute.toSeconds();
    }
}
