package fifthform.simulator.alarms;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bench.WhatIf;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.scenario.ProbeScale;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** What each {@code lift-now} was worth: how long before the range would have been passed, or whether it was false. */
final class LiftWords {
    /** A lift this soon after the bowl was lifted is no false word yet. Own choice. */
    private static final Duration JUST_LEFT = Duration.ofSeconds(4);

    /** Lifted at once the bowl would turn so far below the range: the word came far too soon. Own choice. */
    private static final double TOO_SOON_KELVIN = 0.5;

    /** Nobody is followed longer. */
    private static final Duration LONGEST = Duration.ofMinutes(10);

    private final Kitchen kitchen;
    private final ProbeScale scale;
    private final CelsiusRange work;
    private final List<Double> leadSeconds = new ArrayList<>();
    private Instant onBathUntil = Instant.MIN;
    private Duration off = Duration.ZERO;
    private long offBath;
    private long tooSoon;

    LiftWords(Kitchen kitchen, ProbeScale scale, CelsiusRange work) {
        this.kitchen = kitchen;
        this.scale = scale;
        this.work = work;
    }

    void saw(Moment moment) {
        Spot spot = moment.hands().spot();
        if (spot == Spot.WARM_BATH || spot == Spot.HOT_BATH) onBathUntil = moment.at();
        else off = off.plus(Batch.STEP);
    }

    void lift(Moment moment) {
        boolean on = moment.hands().spot() == Spot.WARM_BATH;
        if (!on) {
            if (Duration.between(onBathUntil, moment.at()).compareTo(JUST_LEFT) > 0) offBath++;
            return;
        }
        double turn =
                new WhatIf(kitchen).ifLifted(moment.kitchen(), moment.hands()).celsius();
        if (scale.shows(turn) < work.lowCelsius() - TOO_SOON_KELVIN) tooSoon++;
        leadSeconds.add(secondsLeft(moment));
    }

    /** Until the chocolate itself would pass the range if the bowl stayed and were stirred. */
    private double secondsLeft(Moment moment) {
        KitchenState state = moment.kitchen();
        Duration gone = Duration.ZERO;
        Hands hands = Hands.stirringAt(Spot.WARM_BATH);
        while (gone.compareTo(LONGEST) < 0 && scale.shows(state.bulkCelsius()) < work.highCelsius()) {
            state = kitchen.advance(state, hands, Batch.STEP);
            gone = gone.plus(Batch.STEP);
        }
        return gone.toMillis() / 1000.0;
    }

    List<Double> leadSeconds() {
        return List.copyOf(leadSeconds);
    }

    long offBath() {
        return offBath;
    }

    long tooSoon() {
        return tooSoon;
    }

    double hoursOff() {
        return off.toMillis() / 3.6e6;
    }
}
