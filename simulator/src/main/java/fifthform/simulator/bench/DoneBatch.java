package fifthform.simulator.bench;

import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.KitchenView;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A batch as it was done, act by act, to be done again with one act changed: the same kitchen, the same hands, nothing
 * else another. The truth against which a what-if is held. Who would have heard or seen something else and acted on it does
 * here what was done then, as long after the changed act.
 */
public final class DoneBatch {
    private final Kitchen kitchen;
    private final Instant begins;
    private final List<KitchenState> states;
    private final List<Acts> acts;
    private final List<Integer> lifts = new ArrayList<>();

    private DoneBatch(Kitchen kitchen, Instant begins, List<KitchenState> states, List<Acts> acts) {
        this.kitchen = kitchen;
        this.begins = begins;
        this.states = states;
        this.acts = acts;
        for (int i = 1; i < acts.size(); i++) {
            if (isWater(spot(i - 1)) && !isWater(spot(i))) lifts.add(i);
        }
    }

    /** Goes through a batch to its end, or to {@link Batch#LONGEST}. */
    public static DoneBatch of(Batch batch, Moment first) {
        List<KitchenState> states = new ArrayList<>();
        List<Acts> acts = new ArrayList<>();
        Moment moment = first;
        Instant last = first.at().plus(Batch.LONGEST);
        while (!moment.maker().done() && moment.at().isBefore(last)) {
            states.add(moment.kitchen());
            // Asked twice, a maker answers twice the same.
            acts.add(moment.maker()
                    .next(new KitchenView(moment.at(), moment.shownCelsius()))
                    .acts());
            moment = batch.next(moment).after();
        }
        states.add(moment.kitchen());
        return new DoneBatch(batch.kitchen(), first.at(), states, acts);
    }

    /** When the bowl left some water for the table or a cloth, oldest first. */
    public List<Instant> lifts() {
        return lifts.stream().map(this::at).toList();
    }

    /** The water that it left there. */
    public Spot liftedFrom(int lift) {
        return spot(lifts.get(lift) - 1);
    }

    /** How long it had been there. */
    public Duration stay(int lift) {
        return Batch.STEP.multipliedBy(lifts.get(lift) - (long) entry(lift));
    }

    private int entry(int lift) {
        int at = lifts.get(lift);
        int entry = at - 1;
        while (entry > 0 && spot(entry - 1) == spot(at - 1)) entry--;
        return entry;
    }

    /** The chocolate's true temperature then, °C; at the ends of the batch where it lies outside. */
    public double bulkCelsius(Instant at) {
        long step = Math.round(Duration.between(begins, at).toMillis() / (double) Batch.STEP.toMillis());
        return states.get((int) Math.max(0, Math.min(states.size() - 1L, step))).bulkCelsius();
    }

    /**
     * A way that was not gone.
     *
     * @param from the moment of its first temperature
     * @param bulkCelsius the chocolate, °C, one a {@link Batch#STEP}
     */
    public record Way(Instant from, List<Double> bulkCelsius) {
        public Way {
            bulkCelsius = List.copyOf(bulkCelsius);
        }

        /** The chocolate then, °C; the nearest end where that lies outside. */
        public double at(Instant at) {
            long step = Math.round(Duration.between(from, at).toMillis() / (double) Batch.STEP.toMillis());
            return bulkCelsius.get((int) Math.max(0, Math.min(bulkCelsius.size() - 1L, step)));
        }
    }

    /**
     * With this lift earlier or later: what the hands did after it they do as long after the new one. While the bowl stays
     * longer they go on as in the same time before the lift.
     *
     * @param lift 0 for the first of {@link #lifts()}
     * @param later how much later, in whole steps of {@link Batch#STEP}; negative for earlier
     * @param reach how far to follow it from the new lift on
     */
    public Way liftedLater(int lift, Duration later, Duration reach) {
        int at = lifts.get(lift);
        int steps = (int) (later.toMillis() / Batch.STEP.toMillis());
        List<Acts> otherwise = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            int then = at - steps + i;
            boolean sameWater = then > 0 && spot(then) == spot(at - 1);
            otherwise.add(quiet(acts.get(sameWater ? then : at - 1)));
        }
        int end = (int) Math.min(acts.size(), at + reach.toMillis() / Batch.STEP.toMillis());
        otherwise.addAll(acts.subList(at, end));
        int from = at + Math.min(0, steps);
        return way(from, states.get(from), otherwise);
    }

    /**
     * With the water hotter or cooler when the bowl came into it before this lift; every act at its time.
     *
     * @param hotterKelvin how much hotter
     * @param reach how far to follow it from the lift on
     */
    public Way bathHotter(int lift, double hotterKelvin, Duration reach) {
        int at = lifts.get(lift);
        int entry = entry(lift);
        int end = (int) Math.min(acts.size(), at + reach.toMillis() / Batch.STEP.toMillis());
        KitchenState hotter = kitchen.waterHotter(states.get(entry), spot(at - 1), hotterKelvin);
        return way(entry, hotter, acts.subList(entry, end));
    }

    private Way way(int from, KitchenState begin, List<Acts> otherwise) {
        List<Double> celsius = new ArrayList<>(otherwise.size() + 1);
        KitchenState state = begin;
        celsius.add(state.bulkCelsius());
        for (Acts each : otherwise) {
            state = each.on(kitchen, state, Batch.STEP);
            celsius.add(state.bulkCelsius());
        }
        return new Way(at(from), celsius);
    }

    /** What was done, without what can be done only once. */
    private static Acts quiet(Acts then) {
        return new Acts(then.hands(), Probe.IN_THE_CHOCOLATE, 0, 0, 0, List.of());
    }

    private Instant at(int step) {
        return begins.plus(Batch.STEP.multipliedBy(step));
    }

    private Spot spot(int step) {
        Hands hands = acts.get(step).hands();
        return hands.spot();
    }

    private static boolean isWater(Spot spot) {
        return spot == Spot.HOT_BATH || spot == Spot.WARM_BATH || spot == Spot.COLD_WATER;
    }
}
