package fifthform.curves.engine;

import fifthform.curves.alarm.Priority;
import fifthform.curves.cue.CueId;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** A story kitchen, the engine that watches it, and somebody who does what the cues say, a reaction later. */
final class StoryMaker {
    /** Whether the maker says by key what the hands do. */
    enum Keys {
        PRESSED,
        /** Pressed, but from the rewarm on never when the bowl comes back to the table. */
        LIFTS_FORGOTTEN,
        SILENT
    }

    static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final Duration LOOK = Duration.ofSeconds(20);
    private static final double HOT_CELSIUS = 54;
    private static final double COLD_CELSIUS = 16;
    private static final double WARM_CELSIUS = 45;

    final StoryKitchen kitchen;
    final Setup setup;
    final List<Event> events = new ArrayList<>();
    final List<Input> inputs = new ArrayList<>();
    State state;
    double highestAfterSeed = Double.NEGATIVE_INFINITY;

    private final Keys keys;
    private Duration hands;
    private Optional<Place> intended = Optional.empty();
    private Instant handsAt = Instant.MAX;
    private Instant touchEnds = Instant.MAX;
    private Instant touchAgainFrom = Instant.MIN;

    StoryMaker(StoryKitchen kitchen, Setup setup, Keys keys) {
        this.kitchen = kitchen;
        this.setup = setup;
        this.keys = keys;
        this.hands = setup.reactionTime();
        this.state = Engine.start(setup, START);
    }

    /** A bowl of chocolate pieces at room temperature that is put over the melting bath; one lift to come up by. */
    static StoryMaker melting(double followsWallSeconds, double wallShare, Keys keys) {
        return melting(followsWallSeconds, wallShare, keys, Approach.ONE_LIFT);
    }

    static StoryMaker melting(double followsWallSeconds, double wallShare, Keys keys, Approach approach) {
        return melting(followsWallSeconds, wallShare, TestRecipes.setup().withApproach(approach), keys);
    }

    static StoryMaker melting(double followsWallSeconds, double wallShare, Setup setup, Keys keys) {
        StoryKitchen kitchen = new StoryKitchen(START, 24, followsWallSeconds, wallShare, 4);
        kitchen.put(Place.BATH, HOT_CELSIUS);
        return new StoryMaker(kitchen, setup, keys);
    }

    /** A whole batch up to where the engine has seen the bowl back over the bath: for stories that begin there. */
    static StoryMaker rewarming(double followsWallSeconds, double wallShare, Keys keys) {
        StoryMaker maker = melting(followsWallSeconds, wallShare, keys);
        maker.obeysUntil(StoryMaker::rewarms, Duration.ofHours(2));
        if (!rewarms(maker.state) || maker.kitchen.place() != Place.BATH) {
            throw new AssertionError("the story did not reach the rewarm: " + maker.phases());
        }
        return maker;
    }

    private static boolean rewarms(State s) {
        return s.batch().phase() == Phase.REWARM && s.batch().place() == Place.BATH;
    }

    Step feeds(Input input) {
        inputs.add(input);
        Step step = Engine.step(setup, state, input);
        state = step.after();
        events.addAll(step.events());
        return step;
    }

    /** Lets the bowl be, reading by reading. */
    void watches(Duration time) {
        watches(time, sample -> feeds(sample));
    }

    /** The same, with somebody between the probe and the engine. */
    void watches(Duration time, Consumer<Sample> wire) {
        Instant end = kitchen.at().plus(time);
        while (kitchen.at().isBefore(end)) wire.accept(kitchen.read());
    }

    /** Leaves the bowl where it is until the chocolate has reached this temperature. */
    void watchesUntil(double celsius) {
        Instant latest = kitchen.at().plus(Duration.ofMinutes(30));
        while (kitchen.chocolateCelsius() < celsius) {
            if (kitchen.at().isAfter(latest)) throw new AssertionError("it never gets as warm as " + celsius);
            feeds(kitchen.read());
        }
    }

    void moves(Place to) {
        kitchen.put(to, waterAt(to));
        boolean up = state.batch().phase() == Phase.REWARM || state.batch().phase() == Phase.WORK;
        boolean forgotten = keys == Keys.LIFTS_FORGOTTEN && to == Place.TABLE && up;
        if (keys != Keys.SILENT && !forgotten) feeds(new BowlMoved(kitchen.at(), to));
    }

    void obeysUntil(Predicate<State> enough, Duration atMost) {
        obeysUntil(enough, atMost, sample -> feeds(sample));
    }

    void obeysUntil(Predicate<State> enough, Duration atMost, Consumer<Sample> wire) {
        Instant end = kitchen.at().plus(atMost);
        while (!enough.test(state) && kitchen.at().isBefore(end)) {
            wire.accept(kitchen.read());
            Phase phase = state.batch().phase();
            if (phase == Phase.REWARM || phase == Phase.WORK) {
                highestAfterSeed = Math.max(highestAfterSeed, kitchen.chocolateCelsius());
            }
            obeys();
        }
    }

    private void obeys() {
        if (intended.isPresent() && !kitchen.at().isBefore(handsAt)) {
            moves(intended.get());
            intended = Optional.empty();
        }
        if (!kitchen.at().isBefore(touchEnds)) {
            touchEnds = Instant.MAX;
            // Seconds that are counted need no reaction; and nobody warms again before the heat has shown.
            if (kitchen.place() == Place.BATH) touchAgainFrom = kitchen.at().plus(LOOK);
            moves(Place.TABLE);
        }
        if (intended.isPresent()) return;
        Place stands = kitchen.place();
        if (due(CueId.MELTED) && stands == Place.BATH) intends(Place.COLD_WATER);
        else if (due(CueId.STOP_COOLING) && stands == Place.COLD_WATER) intends(Place.TABLE);
        else if (due(CueId.CRYSTALS_ENOUGH) && stands == Place.TABLE) {
            intends(Place.BATH);
            // Seconds are named where a short dip is asked for, and none where the bowl stays on until told.
            seconds(CueId.CRYSTALS_ENOUGH).ifPresent(this::counts);
        } else if (due(CueId.LIFT_NOW) && stands == Place.BATH) {
            intends(Place.TABLE);
            touchEnds = Instant.MAX;
        } else if (due(CueId.TOUCH_OF_WARMTH)
                && stands == Place.TABLE
                && !kitchen.at().isBefore(touchAgainFrom)) {
            intends(Place.BATH);
            counts(seconds(CueId.TOUCH_OF_WARMTH).orElseThrow());
        } else if (due(CueId.PUT_BACK) && stands == Place.TABLE && !kitchen.at().isBefore(touchAgainFrom)) {
            double seconds = seconds(CueId.PUT_BACK).orElseThrow();
            intends(state.batch().phase() == Phase.COOL ? Place.COLD_WATER : Place.BATH);
            counts(seconds);
        }
    }

    private OptionalDouble seconds(CueId id) {
        return state.cues().open().get(id).figure();
    }

    private void counts(double seconds) {
        touchEnds = handsAt.plusMillis(Math.round(1000 * seconds));
    }

    /** From now on the hands are quicker or slower than the set-up says. */
    void handsTake(Duration time) {
        hands = time;
    }

    private void intends(Place to) {
        intended = Optional.of(to);
        handsAt = kitchen.at().plus(hands);
    }

    private boolean due(CueId id) {
        return state.cues().isOpen(id);
    }

    private double waterAt(Place place) {
        if (place == Place.COLD_WATER) return COLD_CELSIUS;
        return state.batch().phase() == Phase.MELT ? HOT_CELSIUS : WARM_CELSIUS;
    }

    List<Phase> phases() {
        return events.stream()
                .filter(Event.PhaseChanged.class::isInstance)
                .map(e -> ((Event.PhaseChanged) e).to())
                .toList();
    }

    List<CueId> cues() {
        return events.stream()
                .filter(Event.CueGiven.class::isInstance)
                .map(e -> ((Event.CueGiven) e).cue())
                .toList();
    }

    List<Event.AlarmRaised> raised() {
        return events.stream()
                .filter(Event.AlarmRaised.class::isInstance)
                .map(e -> (Event.AlarmRaised) e)
                .toList();
    }

    List<Event.AlarmRaised> urgent() {
        return raised().stream().filter(e -> e.priority() == Priority.URGENT).toList();
    }
}
