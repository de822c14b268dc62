package fifthform.simulator.rivals;

import fifthform.curves.recipe.Phase;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.maker.Judging;
import fifthform.simulator.rivals.WarningWatch.Warned;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Goes through batches and watches them. */
final class Trial {
    /** Before the bowl is forgotten. */
    private static final Duration WORKS = Duration.ofMinutes(10);

    private final JudgedKitchen kitchen;
    private final Batch batch;
    private final Turning turning;

    Trial(JudgedKitchen kitchen) {
        this.kitchen = kitchen;
        batch = kitchen.batch();
        turning = new Turning(batch);
    }

    /** From this moment, advised by a {@link Rival}, to the end. */
    Tried run(Moment first) {
        LandingWatch landing = new LandingWatch();
        CueWatch cue = new CueWatch(kitchen, turning);
        TroughWatch trough = new TroughWatch(kitchen.scale());
        PlaceWatch place = new PlaceWatch(kitchen);
        WarningWatch warning = new WarningWatch(kitchen);
        SteadyWatch steady = new SteadyWatch(kitchen);
        Moment last = go(first, moment -> false, List.of(landing, cue, trough, place, warning, steady));
        return new Tried(
                kitchen,
                last,
                landing.landing(),
                cue.cue(),
                cue.rows(),
                trough.errorKelvin(),
                place.placeFraction(),
                place.phaseFraction(),
                warning.warned(),
                steady.steady());
    }

    /**
     * Somebody who works steadily puts the bowl over lukewarm water after a while and forgets it there.
     *
     * @param first the beginning of a batch in steady hands
     * @param waterAboveLimitKelvin how much warmer than melt-out that water is, K
     */
    Optional<Warned> drift(Moment first, double waterAboveLimitKelvin) {
        WarningWatch warning = WarningWatch.waiting(kitchen);
        Moment steady = go(first, moment -> worked(moment), List.of(warning));
        warning.begin(steady.at());
        Judging hands = ((Judging) steady.maker()).forgetting(steady.at());
        double celsius = kitchen.recipe().meltOut().limitCelsius() + waterAboveLimitKelvin;
        KitchenState lukewarm = kitchen.scenario().kitchen().withWarmWaterAt(steady.kitchen(), celsius);
        Moment forgotten = new Moment(
                steady.at(),
                steady.steps(),
                lukewarm,
                steady.hands(),
                hands,
                steady.program(),
                steady.shownCelsius(),
                steady.bowl(),
                steady.bath());
        go(forgotten, moment -> warning.warned().isPresent(), List.of(warning));
        return warning.warned();
    }

    /** The first moment from here at which this is so, or the last there is. */
    Moment until(Moment first, Predicate<Moment> reached) {
        return go(first, reached, List.of());
    }

    private static boolean worked(Moment now) {
        Judging hands = (Judging) now.maker();
        return hands.phase() == Phase.WORK && hands.inPhaseFor(now.at()).compareTo(WORKS) >= 0;
    }

    private Moment go(Moment first, Predicate<Moment> reached, List<Watch> watches) {
        Moment moment = first;
        Instant last = first.at().plus(Batch.LONGEST);
        while (!moment.maker().done() && moment.at().isBefore(last) && !reached.test(moment)) {
            Batch.Passed passed = batch.next(moment);
            for (Watch watch : watches) watch.saw(moment, passed.after(), passed.events());
            moment = passed.after();
        }
        return moment;
    }
}
