package fifthform.simulator.training;

import fifthform.simulator.bench.WhatIf;
import fifthform.simulator.bench.WhatIf.Furthest;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;

/**
 * The truth of every step of a session: where the bulk turns if the bowl is lifted then, and if 4 s later, by going on
 * from there in a branch. On the table it is the turning point still to come, and the bulk once that is past.
 */
final class Turns {
    private static final Duration LATER = Duration.ofSeconds(4);
    private static final int LATER_STEPS = 2;

    /** Four times faster than every half second, and off by less than 0.005 K (tested). */
    private static final Duration LOOK = Duration.ofSeconds(2);

    /** A bowl that has turned teaches for so many steps more: a minute. */
    private static final int STEPS_AFTER_THE_TURN = 30;

    private final Kitchen kitchen;
    private final WhatIf whatIf;
    private final double vigour;
    private final List<Lived> steps;
    private final double[] turn;
    private final double[] later;

    private Turns(Kitchen kitchen, double vigour, List<Lived> steps) {
        this.kitchen = kitchen;
        whatIf = new WhatIf(kitchen, LOOK);
        this.vigour = vigour;
        this.steps = steps;
        turn = new double[steps.size()];
        later = new double[steps.size()];
        Arrays.fill(turn, Double.NaN);
        Arrays.fill(later, Double.NaN);
    }

    /**
     * @param vigour how the chocolate is usually stirred in these hands, 0 to 1
     * @param dips of the same steps
     */
    static Turns of(Kitchen kitchen, double vigour, List<Lived> steps, Dips dips) {
        Turns turns = new Turns(kitchen, vigour, steps);
        turns.now(dips);
        turns.later();
        return turns;
    }

    /** The bulk's turning point of this step, °C; NaN where there is nothing to learn. */
    double turnCelsius(int step) {
        return turn[step];
    }

    /** The same if the bowl is lifted 4 s later, °C. */
    double laterCelsius(int step) {
        return later[step];
    }

    private void now(Dips dips) {
        int past = 0;
        for (int k = 0; k < steps.size(); k++) {
            Lived step = steps.get(k);
            if (!dips.teaches(k)) continue;
            if (!step.onTable()) {
                past = 0;
                turn[k] = whatIf.ifLifted(step.kitchen(), hands(step.spot()), vigour)
                        .celsius();
            } else if (past <= STEPS_AFTER_THE_TURN) {
                Furthest furthest = onTable(step, dips.water(k));
                turn[k] = furthest.celsius();
                if (past > 0 || furthest.after().isZero()) past++;
            }
        }
    }

    private Furthest onTable(Lived step, Spot from) {
        Duration since = Duration.ofMillis(Math.round(1000 * (step.atSeconds() - step.movedSeconds())));
        return whatIf.ifOnTable(step.kitchen(), from, since, vigour);
    }

    /** A bowl that in truth stays in its water for so long has that answer already. */
    private void later() {
        for (int k = 0; k < steps.size(); k++) {
            Lived step = steps.get(k);
            if (Double.isNaN(turn[k]) || step.onTable()) later[k] = turn[k];
            else if (stays(k)) later[k] = turn[k + LATER_STEPS];
            else later[k] = branched(step);
        }
    }

    private boolean stays(int k) {
        if (k + LATER_STEPS >= steps.size()) return false;
        Lived then = steps.get(k + LATER_STEPS);
        Lived now = steps.get(k);
        return then.spot() == now.spot() && then.movedSeconds() == now.movedSeconds();
    }

    private double branched(Lived step) {
        KitchenState then = kitchen.advance(step.kitchen(), hands(step.spot()), LATER);
        return whatIf.ifLifted(then, hands(step.spot()), vigour).celsius();
    }

    private Hands hands(Spot spot) {
        return new Hands(spot, vigour, Towel.LEFT);
    }
}
