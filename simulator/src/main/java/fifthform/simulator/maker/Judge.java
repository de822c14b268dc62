package fifthform.simulator.maker;

import fifthform.curves.engine.Event;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.engine.Event.PhaseChanged;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Asked.Act;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Somebody who judges a forecast, at one moment of a batch: melts, cools and holds by the thermometer, and in the rewarm
 * does what the {@link Manner} says. The hands are those of everyone else: they stir in bursts, and press keys late.
 *
 * @param rewarm what is meant to be done
 * @param habits temperatures and times up to the rewarm
 * @param course stage and bowl
 * @param spoon stirring or resting
 * @param distractions what happens to the probe
 * @param asked what was asked and is not done yet
 * @param keys pressed soon
 * @param touching the touches of somebody who holds by the thermometer, and the last peak
 * @param glance an earlier number on the thermometer
 * @param warmSince when the bowl first stood over the water of the rewarm
 * @param wipeAt when the outside will be wiped
 * @param screen the phase that the program shows
 * @param luck for small choices
 */
record Judge(
        Rewarm rewarm,
        Habits habits,
        Course course,
        Spoon spoon,
        Distractions distractions,
        List<Asked> asked,
        List<BowlMoved> keys,
        Touching touching,
        Glance glance,
        Optional<Instant> warmSince,
        Optional<Instant> wipeAt,
        Phase screen,
        Luck luck)
        implements Judging {
    /** From the cue to the hands, evenly between these. */
    private static final double QUICKEST_SECONDS = 1;

    private static final double SLOWEST_SECONDS = 4;
    private static final double LONGEST_TOUCH_SECONDS = 240;

    /** Luck of its own, so that being told changes nothing else of the batch. */
    private static final int REACTION = 7;

    Judge {
        Objects.requireNonNull(rewarm, "rewarm");
        Objects.requireNonNull(habits, "habits");
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(spoon, "spoon");
        Objects.requireNonNull(distractions, "distractions");
        asked = List.copyOf(asked);
        keys = List.copyOf(keys);
        Objects.requireNonNull(touching, "touching");
        Objects.requireNonNull(glance, "glance");
        Objects.requireNonNull(warmSince, "warmSince");
        Objects.requireNonNull(wipeAt, "wipeAt");
        Objects.requireNonNull(screen, "screen");
        Objects.requireNonNull(luck, "luck");
    }

    static Judge beginning(Rewarm rewarm, Habits habits, Luck luck) {
        return new Judge(
                rewarm,
                habits,
                Course.BEFORE,
                Spoon.resting(stirring(luck.branch(0)), habits.plan().stirringShare(), luck.branch(1)),
                new Distractions(
                        habits.plan().interruptions(),
                        List.of(),
                        Calls.of(Disturbance.NEVER, luck.branch(2)),
                        Calls.of(Disturbance.NEVER, luck.branch(3)),
                        Distractions.Disk.WRITES),
                List.of(),
                List.of(),
                Touching.NONE_YET,
                Glance.NONE,
                Optional.empty(),
                Optional.empty(),
                Phase.MELT,
                luck.branch(4));
    }

    /** Bursts and rests of somebody's own. Invented; the method page has 45 s on and 15 s off. */
    private static Stirring stirring(Luck luck) {
        double bout = 15 * StrictMath.exp(luck.uniform() * 1.8);
        Luck second = luck.after();
        double pause = 4 * StrictMath.exp(second.uniform() * 2.2);
        Luck third = second.after();
        Duration afterAMove = Duration.ofSeconds(5 + Math.round(60 * third.uniform()));
        return new Stirring(0.95, 0.15, bout, pause, afterAMove);
    }

    @Override
    public Judge told(Event event) {
        if (event instanceof PhaseChanged changed) return with(rewarm, asked, changed.to());
        if (!(event instanceof CueGiven given) || !rewarm.manner().lifts()) return this;
        Optional<Act> act = act(given);
        if (act.isEmpty() || waitsFor(act.get())) return this;
        double seconds = QUICKEST_SECONDS
                + (SLOWEST_SECONDS - QUICKEST_SECONDS) * luck.branch(REACTION).uniform();
        double touch = act.get() == Act.STIR_ON
                ? 60 * given.figure().orElse(0)
                : Math.max(1, Math.min(LONGEST_TOUCH_SECONDS, given.figure().orElse(5)));
        List<Asked> more = new ArrayList<>(asked);
        more.add(new Asked(given.at().plusMillis(millis(seconds)), act.get(), Duration.ofMillis(millis(touch))));
        return with(rewarm, more, screen);
    }

    /** The same words stand on the screen for both waters; which is meant shows from the step that it is at. */
    private Act back() {
        return screen == Phase.COOL ? Act.BACK_INTO_THE_COLD : Act.PUT_BACK;
    }

    private Judge with(Rewarm how, List<Asked> toDo, Phase shown) {
        return new Judge(
                how, habits, course, spoon, distractions, toDo, keys, touching, glance, warmSince, wipeAt, shown, luck);
    }

    private Optional<Act> act(CueGiven given) {
        boolean touches = rewarm.manner() == Manner.TOUCHES;
        return switch (given.cue()) {
            case LIFT_NOW, OFF_NOW -> Optional.of(Act.LIFT);
            case PUT_BACK -> touches ? Optional.of(back()) : Optional.empty();
            case IN_RANGE -> touches ? Optional.of(Act.POUR) : Optional.empty();
            // With seconds it asks for a first dip, without for a stay until told, which this maker begins unasked.
            case CRYSTALS_ENOUGH ->
                touches && given.figure().isPresent() ? Optional.of(Act.PUT_BACK) : Optional.empty();
            case STIR_ON -> touches ? Optional.of(Act.STIR_ON) : Optional.empty();
            case MELTED,
                    MELT_FIRST,
                    WARM_UP,
                    SEED_NOW,
                    SEED_OUT,
                    STOP_COOLING,
                    GET_READY,
                    WIPE_AND_STIR,
                    WEAK_BATH,
                    TOUCH_OF_WARMTH,
                    TOUCH_OF_WARM_AIR,
                    BOX_WARMER,
                    BOX_COOLER,
                    KEEP_FLUID,
                    HOLD_OVER,
                    THICKENS_SOON -> Optional.empty();
        };
    }

    private boolean waitsFor(Act act) {
        for (Asked each : asked) if (each.act() == act) return true;
        return false;
    }

    private static long millis(double seconds) {
        return Math.round(1000 * seconds);
    }

    @Override
    public Judge lifting(Instant at) {
        return with(rewarm.in(Manner.ONE_LIFT), List.of(new Asked(at, Act.LIFT, Duration.ZERO)), screen);
    }

    @Override
    public Judge forgetting(Instant at) {
        return new Judge(
                rewarm.forgotten(Spot.WARM_BATH),
                habits,
                course.begin(at, Stage.WARMING),
                spoon,
                distractions,
                List.of(),
                keys,
                touching,
                glance,
                warmSince,
                wipeAt,
                screen,
                luck);
    }

    @Override
    public Next next(KitchenView view) {
        return new JudgeAtWork(this, view).next();
    }

    @Override
    public Phase phase() {
        return switch (course.stage()) {
            case MELTING -> Phase.MELT;
            case COOLING -> Phase.COOL;
            case HOLDING -> Phase.SEED;
            case WARMING -> Phase.REWARM;
            case SETTLING, POURING, GONE -> Phase.WORK;
        };
    }

    @Override
    public Duration inPhaseFor(Instant at) {
        return course.inStageFor(at);
    }

    @Override
    public boolean done() {
        return course.stage() == Stage.GONE;
    }
}
