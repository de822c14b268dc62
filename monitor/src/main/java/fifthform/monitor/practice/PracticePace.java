package fifthform.monitor.practice;

import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event;
import fifthform.curves.recipe.Phase;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.session.SessionListener;
import fifthform.monitor.session.SessionSnapshot;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Lets practice run fast where nothing happens and slowly where the cue has to be read: from <i>get ready</i> until the
 * temperature has turned.
 */
public final class PracticePace implements SessionListener {
    private static final double READABLE = 3;
    private static final double SLOWEST = 1;
    private static final double FASTEST = 60;

    /** Nothing is worth more slow minutes than this; a turning point that is not seen must not hold up the batch. */
    private static final Duration LONGEST = Duration.ofSeconds(150);

    private final SessionClock clock;
    private volatile double usual;
    private Optional<Instant> slowSince = Optional.empty();

    /** Practice at {@code usual} times the speed of life, 1 to 60. */
    public PracticePace(SessionClock clock, double usual) {
        this.clock = Objects.requireNonNull(clock, "clock");
        this.usual = usual;
    }

    /** Twice as fast from now on, up to ×60. */
    public void faster() {
        set(Math.min(FASTEST, 2 * clock.speed()));
    }

    /** Half as fast from now on, down to ×1. */
    public void slower() {
        set(Math.max(SLOWEST, clock.speed() / 2));
    }

    private void set(double speed) {
        usual = speed;
        clock.runAt(speed);
    }

    @Override
    public void stepped(SessionSnapshot snapshot, List<Event> events) {
        Instant at = snapshot.state().at();
        for (Event event : events) {
            if (event instanceof Event.CueGiven cue && isToBeRead(cue.cue()) && slowSince.isEmpty())
                slowSince = begin(at);
            if (event instanceof Event.Turned
                    || event instanceof Event.PhaseChanged changed && changed.to() == Phase.WORK) {
                end();
            }
        }
        if (slowSince.filter(since -> since.plus(LONGEST).isBefore(at)).isPresent()) end();
    }

    private Optional<Instant> begin(Instant at) {
        clock.runAt(Math.min(usual, READABLE));
        return Optional.of(at);
    }

    private void end() {
        if (slowSince.isEmpty()) return;
        slowSince = Optional.empty();
        clock.runAt(usual);
    }

    private static boolean isToBeRead(CueId cue) {
        return cue == CueId.GET_READY || cue == CueId.LIFT_NOW;
    }
}
