package fifthform.simulator.device;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Input;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.LinkException;
import fifthform.probe.link.LinkSource;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Kitchen;
import fifthform.simulator.bowl.KitchenState;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.Next;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A kitchen with somebody in it, going through one batch in its own time. It goes on only when the bowl's line is read
 * (or {@link #advanceTo} asks), never by a clock: pacing is the business of whoever reads.
 *
 * <p>Safe for several threads: one lock around everything. The bath's line never drives the kitchen; reading it waits up
 * to 200 ms for the bowl's line to be read further, so two reader threads keep together. Once the maker is done both
 * lines end.
 */
public final class RunningKitchen {
    /** Hands and adapters act on this grid. */
    public static final Duration TICK = Duration.ofMillis(125);

    private static final Duration VAIN_OPENING_TAKES = Duration.ofMillis(500);
    private static final long BATH_WAITS_MILLISECONDS = 200;

    private final Kitchen kitchen;
    private final Adapter bowlAdapter;
    private final Adapter bathAdapter;
    private final Map<Spot, Instant> firstAt = new EnumMap<>(Spot.class);
    private final List<Input> presses = new ArrayList<>();
    private KitchenState state;
    private Maker maker;
    private Hands hands = Hands.leaving(Spot.TABLE);
    private Instant now;

    /**
     * @param start how the kitchen is found
     * @param startsAt the time then, and of all that follows
     * @param random for the adapters' noise
     */
    public RunningKitchen(
            Kitchen kitchen,
            KitchenState start,
            Maker maker,
            AdapterSettings bowlAdapter,
            AdapterSettings bathAdapter,
            Instant startsAt,
            SplittableRandom random) {
        this.kitchen = kitchen;
        this.maker = maker;
        this.bowlAdapter = new Adapter("practice bowl", bowlAdapter, startsAt, random.split());
        this.bathAdapter = new Adapter("practice bath", bathAdapter, startsAt, random.split());
        state = start;
        now = startsAt;
    }

    /** Where the bowl's probe is plugged in. Reading its line makes time pass. */
    public LinkSource bowlSource() {
        return new KitchenSource(this, bowlAdapter, this::readDriving, this::vainOpening);
    }

    /** Where the bath's probe is plugged in. */
    public LinkSource bathSource() {
        return new KitchenSource(this, bathAdapter, this::readFollowing, () -> {});
    }

    /** The program says something to the maker. */
    public synchronized void told(Event event) {
        maker = maker.told(event);
    }

    /** The keys the maker pressed since this was last asked, oldest first. */
    public synchronized List<Input> takePresses() {
        List<Input> taken = List.copyOf(presses);
        presses.clear();
        return taken;
    }

    /** Lets time pass up to this moment, or until the maker is done; never goes back. */
    public synchronized void advanceTo(Instant at) {
        while (now.isBefore(at) && !maker.done()) tick();
    }

    public synchronized Instant now() {
        return now;
    }

    /** How it really stands in the kitchen, which no program can know. */
    public synchronized Truth truth() {
        return Truth.of(now, kitchen, state, hands.spot());
    }

    /** The whole state, for going on from here in another way. */
    public synchronized KitchenState state() {
        return state;
    }

    public synchronized boolean done() {
        return maker.done();
    }

    /** Whether reading the bath's line would not wait. */
    public synchronized boolean bathHasLine() {
        return bathAdapter.hasLine();
    }

    private synchronized Optional<Arrival> readDriving(KitchenLink link) throws LinkException {
        link.requireAlive();
        Optional<Arrival> waiting = bowlAdapter.poll();
        if (waiting.isPresent()) return waiting;
        if (maker.done()) return Optional.empty();
        tick();
        link.requireAlive();
        return Optional.of(bowlAdapter.poll().orElse(Arrival.silence(now)));
    }

    private synchronized Optional<Arrival> readFollowing(KitchenLink link) throws LinkException, InterruptedException {
        link.requireAlive();
        if (!bathAdapter.hasLine() && !maker.done()) wait(BATH_WAITS_MILLISECONDS);
        link.requireAlive();
        Optional<Arrival> waiting = bathAdapter.poll();
        if (waiting.isPresent() || maker.done()) return waiting;
        return Optional.of(Arrival.silence(now));
    }

    /** Trying in vain takes time, else a kitchen that only moves when read would never get its adapter back. */
    private synchronized void vainOpening() {
        advanceTo(now.plus(VAIN_OPENING_TAKES));
    }

    /** Wakes a waiting reader, for example because its line was closed. */
    synchronized void wake() {
        notifyAll();
    }

    private void tick() {
        Next next = maker.next(new KitchenView(now, bowlAdapter.shownCelsius()));
        maker = next.after();
        presses.addAll(next.acts().presses());
        hands = next.acts().hands();
        firstAt.putIfAbsent(hands.spot(), now);
        state = next.acts().on(kitchen, state, TICK);
        now = now.plus(TICK);
        bowlAdapter.tick(now, state.tipCelsius(), firstAt);
        bathAdapter.tick(now, state.bathTipCelsius(), firstAt);
        notifyAll();
    }
}
