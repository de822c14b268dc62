package fifthform.monitor.practice;

import fifthform.curves.cue.CueId;
import fifthform.curves.cue.Dip;
import fifthform.curves.cue.OpenCue;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.session.SessionListener;
import fifthform.monitor.session.SessionSnapshot;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Lets practice run fast where nothing happens and slowly where something has to be read: at the speed of life in its
 * first seconds and while a step is due, since a simulated maker acts within seconds, and at ×3 while the seconds of a short dip are counted and
 * from <i>get ready</i> until the temperature has turned. Hands count a dip at the speed of life.
 */
public final class PracticePace implements SessionListener {
    private static final double LIFE = 1;
    private static final double READABLE = 3;
    private static final double FASTEST = 60;
    private static final double FASTEST_BY_HAND = 10;

    /** Steps that are due now; the others stand for minutes. */
    private static final Set<CueId> DUE_NOW = EnumSet.of(
            CueId.MELTED,
            CueId.MELT_FIRST,
            CueId.WARM_UP,
            CueId.STOP_COOLING,
            CueId.CRYSTALS_ENOUGH,
            CueId.LIFT_NOW,
            CueId.OFF_NOW,
            CueId.PUT_BACK,
            CueId.TOUCH_OF_WARMTH,
            CueId.TOUCH_OF_WARM_AIR,
            CueId.BOX_WARMER,
            CueId.BOX_COOLER);

    /** Nothing flies past before its window is there; an engine in a hurry would keep the window waiting as well. */
    private static final Duration OPENING = Duration.ofSeconds(2);

    /** How long a step is shown at the speed of life; a maker who takes no notice must not hold up the batch. */
    private static final Duration SHOWN = Duration.ofSeconds(5);

    private static final Duration HANDS_NEED = Duration.ofSeconds(20);

    private static final Duration IN_RANGE_SHOWN = Duration.ofSeconds(9);

    /** A turning point that is never seen must not hold it up either. */
    private static final Duration LONGEST_TURN = Duration.ofSeconds(120);

    /** What happens where a cue has to be read. */
    public enum AtCues {
        /** For somebody who looks on. */
        SLOW_DOWN,
        /** For somebody whose own hands it takes: they need longer than a simulated maker. */
        WAIT_FOR_HANDS,
        GO_ON
    }

    private final SessionClock clock;
    private final AtCues atCues;
    private volatile double usual;
    private volatile boolean hurried;
    private Optional<Instant> firstStepAt = Optional.empty();
    private Optional<Instant> turnAwaitedSince = Optional.empty();

    /** Practice at {@code usual} times the speed of life, 1 to 60. */
    public PracticePace(SessionClock clock, double usual, AtCues atCues) {
        this.clock = Objects.requireNonNull(clock, "clock");
        this.atCues = Objects.requireNonNull(atCues, "atCues");
        this.usual = usual;
        if (atCues != AtCues.GO_ON) clock.runAt(LIFE);
    }

    /** Twice as fast from now on, up to ×60, by hand ×10; a slow passage ends at once. */
    public void faster() {
        set(Math.min(fastest(), 2 * clock.speed()));
    }

    /** Half as fast from now on, down to the speed of life. */
    public void slower() {
        set(Math.max(LIFE, clock.speed() / 2));
    }

    private double fastest() {
        return atCues == AtCues.WAIT_FOR_HANDS ? FASTEST_BY_HAND : FASTEST;
    }

    private void set(double speed) {
        usual = speed;
        hurried = true;
        clock.runAt(speed);
    }

    @Override
    public void stepped(SessionSnapshot snapshot, List<Event> events) {
        if (atCues == AtCues.GO_ON) return;
        State state = snapshot.state();
        if (firstStepAt.isEmpty()) firstStepAt = Optional.of(state.at());
        for (Event event : events) {
            if (event instanceof Event.CueGiven cue) begun(cue);
            if (event instanceof Event.Turned) turnAwaitedSince = Optional.empty();
        }
        double wanted = hurried ? usual : Math.min(usual, readable(state));
        if (wanted != clock.speed()) clock.runAt(wanted);
    }

    private Duration shown() {
        return atCues == AtCues.WAIT_FOR_HANDS ? HANDS_NEED : SHOWN;
    }

    private void begun(Event.CueGiven cue) {
        hurried = false;
        boolean turnComes = cue.cue() == CueId.GET_READY || cue.cue() == CueId.LIFT_NOW;
        if (turnComes && turnAwaitedSince.isEmpty()) turnAwaitedSince = Optional.of(cue.at());
    }

    /** The last seconds of a short dip are counted aloud; nobody counts with a clock that runs thirty times as fast. */
    private static boolean isCounted(State state) {
        return state.cues()
                .dips()
                .dip()
                .filter(dip -> dip.is(Dip.Stage.OVER_BATH))
                .map(dip -> Math.abs(dip.seconds() - dip.secondsAt(state.at())))
                .filter(off -> off <= HANDS_NEED.toSeconds())
                .isPresent();
    }

    /** The fastest speed at which what is on the screen can be read. */
    private double readable(State state) {
        if (state.at().isBefore(firstStepAt.orElseThrow().plus(OPENING))) return LIFE;
        for (Map.Entry<CueId, OpenCue> open : state.cues().open().entrySet()) {
            Duration age = Duration.between(open.getValue().since(), state.at());
            if (DUE_NOW.contains(open.getKey()) && age.compareTo(shown()) < 0) return LIFE;
            if (open.getKey() == CueId.IN_RANGE && age.compareTo(IN_RANGE_SHOWN) < 0) return READABLE;
        }
        if (isCounted(state)) return atCues == AtCues.WAIT_FOR_HANDS ? LIFE : READABLE;
        boolean turning = turnAwaitedSince
                .filter(since -> Duration.between(since, state.at()).compareTo(LONGEST_TURN) < 0)
                .isPresent();
        return turning ? READABLE : FASTEST;
    }
}
