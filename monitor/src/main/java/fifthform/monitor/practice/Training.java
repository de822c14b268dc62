package fifthform.monitor.practice;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.monitor.practice.Debrief.Crystals;
import fifthform.monitor.session.SessionListener;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.simulator.bench.BatchWatch;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.device.RunningKitchen;
import fifthform.simulator.device.Truth;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** A training under way: follows what is said, what is done and how it really stands, for the debrief. */
public final class Training implements SessionListener {
    private final RunningKitchen kitchen;
    private final OwnHands hands;
    private final Recipe recipe;
    private final BatchWatch watch;
    private final CueLog cues = new CueLog();
    private Optional<Instant> last = Optional.empty();
    private OptionalDouble forms = OptionalDouble.empty();
    private Crystals crystals = Crystals.UNSAID;
    private final Optional<Holding> holding;
    private Optional<Instant> heldSince = Optional.empty();
    private Duration held = Duration.ZERO;
    private Duration heldInRange = Duration.ZERO;
    private final Beginning beginning;
    private boolean cooled;
    private boolean rewarmed;
    private boolean reached;
    private boolean molten;
    private int meltOuts;
    private Duration underFor = Duration.ZERO;

    /**
     * A training that begins now.
     *
     * @param recipe by which it is judged
     * @param beginning what it begins with: what is in temper needs no cold water
     * @param holding the hold that is planned
     */
    public Training(
            RunningKitchen kitchen, OwnHands hands, Recipe recipe, Beginning beginning, Optional<Holding> holding) {
        this.kitchen = Objects.requireNonNull(kitchen, "kitchen");
        this.hands = Objects.requireNonNull(hands, "hands");
        this.recipe = Objects.requireNonNull(recipe, "recipe");
        this.beginning = Objects.requireNonNull(beginning, "beginning");
        this.holding = Objects.requireNonNull(holding, "holding");
        this.cooled = beginning.isInTemper();
        this.watch = new BatchWatch(recipe);
        // However soon it ends, there is a first moment.
        saw(kitchen.truth());
    }

    /** Whose hands. */
    public OwnHands hands() {
        return hands;
    }

    @Override
    public synchronized void stepped(SessionSnapshot snapshot, List<Event> events) {
        saw(kitchen.truth());
        crystals = new Crystals(
                snapshot.tally().crystals(),
                forms,
                snapshot.tally()
                        .seedLost()
                        .map(lost -> Duration.between(snapshot.state().started(), lost.at())));
        watch.forecast(snapshot.state()
                .forecast()
                .map(f -> OptionalDouble.of(f.ifLifted().celsius()))
                .orElse(OptionalDouble.empty()));
        for (Event event : events) {
            watch.heard(event);
            boolean begins = event instanceof CueGiven given && given.cue() == CueId.IN_RANGE;
            if (begins && heldSince.isEmpty()) heldSince = Optional.of(event.at());
            cues.heard(event);
        }
    }

    /** A lift answers the forecast that was shown before it, so what is seen comes before what is said now. */
    private void saw(Truth truth) {
        if (last.filter(before -> !truth.at().isAfter(before)).isPresent()) return;
        Duration passed = Duration.between(last.orElse(truth.at()), truth.at());
        last = Optional.of(truth.at());
        forms = truth.forms().isPresent()
                ? OptionalDouble.of(truth.forms().get().stableFraction())
                : OptionalDouble.empty();
        watch.saw(truth.at(), truth.bulkCelsius(), truth.spot());
        if (truth.spot() == Spot.COLD_WATER) cooled = true;
        if (cooled && truth.spot() == Spot.WARM_BATH) rewarmed = true;
        if (heldSince.isPresent()) {
            held = held.plus(passed);
            if (recipe.work().range().contains(truth.bulkCelsius())) heldInRange = heldInRange.plus(passed);
        }
        if (!rewarmed) return;
        if (truth.bulkCelsius() >= recipe.work().range().lowCelsius()) reached = true;
        else if (reached) underFor = underFor.plus(passed);
        boolean now = truth.bulkCelsius() >= recipe.meltOut().limitCelsius();
        if (now && !molten) meltOuts++;
        molten = now;
    }

    /** How it went until now. */
    public synchronized Debrief debrief() {
        return new Debrief(
                recipe,
                watch.ending(),
                watch.forecasts(),
                cues.answers(hands.moves()),
                underFor,
                meltOuts,
                hands.stirredFraction(),
                hands.timesWiped(),
                crystals,
                beginning,
                holding.map(plan -> new Debrief.Stay(plan, held, heldInRange)));
    }
}
