package fifthform.monitor.practice;

import fifthform.curves.engine.Event;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.SetupChanged;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.Next;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The hands of whoever sits at the keys, in the simulated kitchen. What the keys tell the program is what the hands do.
 *
 * <p>Unlike other makers this one is no value, since nobody can say what a person does next: a batch in these hands can
 * be gone through only once. Safe for several threads: keys come on the screen's, the kitchen asks on a reader's.
 */
public final class OwnHands implements Maker {
    /** As a careful maker of the simulator stirs. */
    private static final double VIGOUR_FRACTION = 0.9;

    /** To wipe a bowl all round; our own guess. */
    private static final Duration WIPING = Duration.ofSeconds(8);

    /** Nobody trains for longer without a pause; also ends a training that was left alone. */
    private static final Duration LONGEST = Duration.ofHours(3);

    private final List<Move> moves = new ArrayList<>();
    private Held held = new Held(Spot.HOT_BATH, Stirring.STILL, Probe.IN_THE_CHOCOLATE);
    private Held before = held;
    private double seedGrams;
    private boolean wipes;
    private Optional<Instant> wipesUntil = Optional.empty();
    private Optional<Instant> begun = Optional.empty();
    private Instant last = Instant.MIN;
    private Spot seenAt = held.spot();
    private Duration stirred = Duration.ZERO;
    private int wiped;
    private boolean finished;

    /** What stays as it is until another key. */
    private record Held(Spot spot, Stirring stirring, Probe probe) {}

    /** The bowl came to stand somewhere else, in the kitchen's time. */
    public record Move(Instant at, Spot from, Spot to) {}

    /**
     * Does what a key said.
     *
     * @param phase the phase the batch is in: there are two warm waters
     */
    public synchronized void did(MakerAction action, Phase phase) {
        // Seed cannot be taken back, nor stirring: the program undoes neither.
        if (action instanceof Undone) held = new Held(before.spot(), held.stirring(), before.probe());
        else if (action instanceof SeedAdded seed) seedGrams += seed.grams();
        else if (action instanceof StirringSaid said) held = new Held(held.spot(), said.stirring(), held.probe());
        else after(action, phase).ifPresent(this::hold);
    }

    private void hold(Held next) {
        before = held;
        held = next;
    }

    /** How things are held after this; empty where the hands have nothing to do with it. */
    private Optional<Held> after(MakerAction action, Phase phase) {
        if (action instanceof BowlMoved moved) return Optional.of(at(spot(moved.to(), phase)));
        if (action instanceof PhaseConfirmed to) return Optional.of(at(usual(to.phase())));
        if (action instanceof ProbeTakenOut) return Optional.of(new Held(held.spot(), held.stirring(), Probe.OUT));
        if (action instanceof ProbePutBack)
            return Optional.of(new Held(held.spot(), held.stirring(), Probe.IN_THE_CHOCOLATE));
        // Another chocolate can be taken back, and the hands are then where they are.
        return action instanceof SetupChanged ? Optional.of(held) : Optional.empty();
    }

    private Held at(Spot spot) {
        return new Held(spot, held.stirring(), held.probe());
    }

    private static Spot spot(Place place, Phase phase) {
        return switch (place) {
            case BATH -> phase == Phase.MELT ? Spot.HOT_BATH : Spot.WARM_BATH;
            case TABLE -> Spot.TABLE;
            case COLD_WATER -> Spot.COLD_WATER;
        };
    }

    private static Spot usual(Phase phase) {
        return switch (phase) {
            case MELT -> Spot.HOT_BATH;
            case COOL -> Spot.COLD_WATER;
            case REWARM -> Spot.WARM_BATH;
            case SEED, WORK, REST -> Spot.TABLE;
        };
    }

    /** Dries the outside of the bowl. */
    public synchronized void wipe() {
        wipes = true;
    }

    /** What the spoon would do if that were changed now. */
    public synchronized Stirring otherStirring() {
        return held.stirring() == Stirring.STIRRED ? Stirring.STILL : Stirring.STIRRED;
    }

    /** Leaves the kitchen: the batch is over. */
    public synchronized void finish() {
        finished = true;
    }

    /** What the hands are at, in a few words for the screen. */
    public synchronized String words() {
        String where = switch (held.spot()) {
            case HOT_BATH -> "hot water";
            case WARM_BATH -> "warm water";
            case COLD_WATER -> "cold water";
            case TABLE, COOL_CLOTH, WARM_CLOTH, WARM_BOX, FRIDGE -> "off the water";
        };
        return where + (held.stirring() == Stirring.STIRRED ? ", stirred" : ", not stirred");
    }

    /** Where the bowl was put, oldest first. */
    public synchronized List<Move> moves() {
        return List.copyOf(moves);
    }

    /** Share of the time in which the chocolate was stirred, 0 to 1. */
    public synchronized double stirredFraction() {
        double all = begun.map(b -> Duration.between(b, last).toMillis()).orElse(0L);
        return all <= 0 ? 0 : Math.min(1, stirred.toMillis() / all);
    }

    /** How often the bowl was dried. */
    public synchronized int timesWiped() {
        return wiped;
    }

    @Override
    public Maker told(Event event) {
        return this;
    }

    @Override
    public synchronized Next next(KitchenView view) {
        Instant at = view.at();
        boolean beginning = begun.isEmpty();
        if (beginning) begun = Optional.of(at);
        else if (held.stirring() == Stirring.STIRRED) stirred = stirred.plus(Duration.between(last, at));
        last = at;
        if (held.spot() != seenAt) moves.add(new Move(at, seenAt, held.spot()));
        seenAt = held.spot();
        if (wipes) {
            wipesUntil = Optional.of(at.plus(WIPING));
            wiped++;
            wipes = false;
        }
        // Nobody wipes a bowl that stands in water.
        boolean wiping =
                held.spot() == Spot.TABLE && wipesUntil.filter(at::isBefore).isPresent();
        double vigour = held.stirring() == Stirring.STIRRED ? VIGOUR_FRACTION : 0;
        Hands hands = new Hands(held.spot(), vigour, wiping ? Towel.WIPING : Towel.LEFT);
        Acts acts = new Acts(hands, held.probe(), seedGrams, 0, List.of());
        seedGrams = 0;
        return new Next(this, acts);
    }

    @Override
    public synchronized boolean done() {
        return finished || begun.filter(b -> !last.isBefore(b.plus(LONGEST))).isPresent();
    }
}
