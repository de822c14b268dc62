package fifthform.monitor.practice;

import fifthform.curves.engine.Event;
import fifthform.curves.input.MakerAction;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.ProbePutBack;
import fifthform.curves.input.MakerAction.ProbeTakenOut;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.SetupChanged;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.monitor.texts.PracticeText;
import fifthform.simulator.bowl.Blower;
import fifthform.simulator.bowl.Hands;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.ProbePlace;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Maker;
import fifthform.simulator.maker.Next;
import fifthform.simulator.maker.Plan;
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
    private final Optional<Warmth> warmth;
    private Held held;
    private Held before;
    private double seedGrams;
    private boolean wipes;
    private Optional<Instant> wipesUntil = Optional.empty();
    private Optional<Instant> begun = Optional.empty();
    private Instant last = Instant.MIN;
    private Spot seenAt;
    private Duration stirred = Duration.ZERO;
    private int wiped;
    private boolean finished;
    private double blowsSeconds;
    private Optional<Instant> blowsUntil = Optional.empty();
    private double boxCelsius;
    private double bathWarmerKelvin;
    private Optional<Instant> heeded = Optional.empty();

    /** Hands at a bowl over hot water, that mean to hold it in no way of their own. */
    public OwnHands() {
        this(Spot.HOT_BATH, Optional.empty(), Hands.USUAL_BOX_CELSIUS);
    }

    private OwnHands(Spot first, Optional<Warmth> warmth, double boxCelsius) {
        this.held = new Held(first, Stirring.STILL, Probe.IN_THE_CHOCOLATE);
        this.before = held;
        this.seenAt = first;
        this.warmth = warmth;
        this.boxCelsius = boxCelsius;
    }

    /** Hands that begin and hold as this plan has it: what is in temper stands on the table. */
    public static OwnHands of(Plan plan) {
        return new OwnHands(
                plan.beginning().isInTemper() ? Spot.TABLE : Spot.HOT_BATH,
                plan.holding().map(Holding::warmth),
                plan.boxCelsius());
    }

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
        // Proved in the range, it goes where it is held.
        if (action instanceof SampleProved && held.spot() == Spot.TABLE && holdsBy(Warmth.BOX))
            return Optional.of(at(Spot.WARM_BOX));
        if (action instanceof ProbeTakenOut) return Optional.of(new Held(held.spot(), held.stirring(), Probe.OUT));
        if (action instanceof ProbePutBack)
            return Optional.of(new Held(held.spot(), held.stirring(), Probe.IN_THE_CHOCOLATE));
        // Another chocolate can be taken back, and the hands are then where they are.
        return action instanceof SetupChanged ? Optional.of(held) : Optional.empty();
    }

    private Held at(Spot spot) {
        return new Held(spot, held.stirring(), held.probe());
    }

    private Spot spot(Place place, Phase phase) {
        return switch (place) {
            case BATH -> phase == Phase.MELT ? Spot.HOT_BATH : Spot.WARM_BATH;
            case TABLE -> phase == Phase.WORK && holdsBy(Warmth.BOX) ? Spot.WARM_BOX : Spot.TABLE;
            case COLD_WATER -> Spot.COLD_WATER;
        };
    }

    private boolean holdsBy(Warmth by) {
        return warmth.equals(Optional.of(by));
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

    /**
     * Blows warm air for so long.
     *
     * @param asked since when it is asked for: what was asked for once is done once
     */
    public synchronized void blow(Instant asked, double seconds) {
        if (heeds(asked)) blowsSeconds = seconds;
    }

    /**
     * Turns the warm box by so much, K; colder below 0.
     *
     * @param asked since when it is asked for: what was asked for once is done once
     */
    public synchronized void turnBox(Instant asked, double kelvin) {
        if (heeds(asked)) boxCelsius = Math.max(15, Math.min(60, boxCelsius + kelvin));
    }

    /**
     * Pours a cup of hot water into the bath for the rewarm.
     *
     * @param asked since when it is asked for: what was asked for once is done once
     * @return whether it was done now
     */
    public synchronized boolean warmBath(Instant asked) {
        boolean now = heeds(asked);
        if (now) bathWarmerKelvin += Acts.CUP_OF_HOT_WATER_KELVIN;
        return now;
    }

    private boolean heeds(Instant asked) {
        if (heeded.equals(Optional.of(asked))) return false;
        heeded = Optional.of(asked);
        return true;
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
            case HOT_BATH -> PracticeText.HOT_WATER.say();
            case WARM_BATH -> PracticeText.WARM_WATER.say();
            case COLD_WATER -> PracticeText.COLD_WATER.say();
            case WARM_BOX -> PracticeText.IN_THE_WARM_BOX.say();
            case TABLE, COOL_CLOTH, WARM_CLOTH, FRIDGE -> PracticeText.OFF_THE_WATER.say();
        };
        return where
                + (held.stirring() == Stirring.STIRRED ? PracticeText.STIRRED.say() : PracticeText.NOT_STIRRED.say());
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
        if (blowsSeconds > 0) {
            blowsUntil = Optional.of(at.plusMillis(Math.round(1000 * blowsSeconds)));
            blowsSeconds = 0;
        }
        Blower blower = blowsUntil.filter(at::isBefore).isPresent() ? Blower.HAIR_DRYER : Blower.OFF;
        double vigour = held.stirring() == Stirring.STIRRED ? VIGOUR_FRACTION : 0;
        Hands hands = new Hands(
                held.spot(), vigour, wiping ? Towel.WIPING : Towel.LEFT, blower, ProbePlace.IN_CHOCOLATE, boxCelsius);
        Acts acts = new Acts(hands, held.probe(), seedGrams, 0, bathWarmerKelvin, List.of());
        seedGrams = 0;
        bathWarmerKelvin = 0;
        return new Next(this, acts);
    }

    @Override
    public synchronized boolean done() {
        return finished || begun.filter(b -> !last.isBefore(b.plus(LONGEST))).isPresent();
    }
}
