package fifthform.monitor.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.cue.CueId;
import fifthform.curves.cue.Dip;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.practice.PracticePace.AtCues;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.session.Tapes;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PracticePaceTest {
    private final SessionSnapshot start = Tapes.start(Tapes.UNPLUGGED);
    private final SessionSnapshot early = after(start, 3);
    private final Instant now = early.state().at();
    private final SessionClock clock = new SessionClock(now, 30, () -> 0);
    private final PracticePace pace = begun(start, AtCues.SLOW_DOWN);

    /** A pace past its opening seconds once anything that is later than those is stepped. */
    private PracticePace begun(SessionSnapshot from, AtCues atCues) {
        PracticePace begun = new PracticePace(clock, 30, atCues);
        begun.stepped(from, List.of());
        return begun;
    }

    private static SessionSnapshot after(SessionSnapshot from, int seconds) {
        Instant then = from.state().at().plusSeconds(seconds);
        return Tapes.first(Tapes.UNPLUGGED, s -> !s.state().at().isBefore(then));
    }

    @Test
    void nothingFliesPastBeforeTheWindowIsThere() {
        SessionClock fresh = new SessionClock(now, 30, () -> 0);
        PracticePace first = new PracticePace(fresh, 30, AtCues.SLOW_DOWN);
        assertEquals(1, fresh.speed(), "before the first reading as well");
        first.stepped(start, List.of());
        assertEquals(1, fresh.speed());
        pace.stepped(start, List.of());
        assertEquals(1, clock.speed());
        pace.stepped(early, List.of());
        assertEquals(30, clock.speed());
    }

    @Test
    void slowFromGetReadyToTheTurningPoint() {
        pace.stepped(early, List.of(cue(CueId.STIR_ON)));
        assertEquals(30, clock.speed());
        pace.stepped(early, List.of(cue(CueId.GET_READY)));
        assertEquals(3, clock.speed());
        pace.stepped(early, List.of(cue(CueId.LIFT_NOW)));
        assertEquals(3, clock.speed());
        pace.stepped(early, List.of(new Event.Turned(now, 31.5, 0.8)));
        assertEquals(30, clock.speed());
    }

    @Test
    void atTheSpeedOfLifeWhileAStepIsFreshlyDueAndNoLongerThanItTakesToReadIt() {
        SessionSnapshot first = Tapes.first(Tapes.OWN_WAY, s -> s.state().cues().isOpen(CueId.LIFT_NOW));
        Instant due = first.state().at();
        PracticePace own = begun(Tapes.start(Tapes.OWN_WAY), AtCues.SLOW_DOWN);
        own.stepped(first, List.of());
        assertEquals(1, clock.speed());
        own.stepped(at(due.plusMillis(4500)), List.of());
        assertEquals(1, clock.speed());
        own.stepped(at(due.plusMillis(5500)), List.of());
        assertEquals(30, clock.speed());
    }

    private static SessionSnapshot at(Instant instant) {
        return Tapes.first(Tapes.OWN_WAY, s -> !s.state().at().isBefore(instant));
    }

    /** Else the seconds of a short dip would fly by, and no hands could answer its end. */
    @Test
    void slowWhileTheSecondsOfAShortDipAreCounted() {
        SessionSnapshot dipping = Tapes.first(Tapes.UNPLUGGED, s -> isCounting(s.state()));
        pace.stepped(dipping, List.of());
        assertEquals(3, clock.speed());
        begun(start, AtCues.WAIT_FOR_HANDS).stepped(dipping, List.of());
        assertEquals(1, clock.speed(), "for one's own hands");
    }

    private static boolean isCounting(State state) {
        return state.cues().open().isEmpty()
                && state.cues()
                        .dips()
                        .dip()
                        .filter(dip -> dip.is(Dip.Stage.OVER_BATH) && dip.secondsAt(state.at()) < dip.seconds())
                        .isPresent();
    }

    @Test
    void aTurningPointThatNobodySeesDoesNotHoldUpTheBatch() {
        pace.stepped(early, List.of(cue(CueId.LIFT_NOW)));
        SessionSnapshot late =
                Tapes.first(Tapes.UNPLUGGED, s -> s.state().at().isAfter(now.plus(Duration.ofSeconds(150))));
        pace.stepped(late, List.of());
        assertEquals(30, clock.speed());
    }

    @Test
    void keysDoubleAndHalveWithinOneToSixty() {
        pace.stepped(early, List.of());
        pace.faster();
        assertEquals(60, clock.speed());
        pace.faster();
        assertEquals(60, clock.speed());
        for (int i = 0; i < 9; i++) pace.slower();
        assertEquals(1, clock.speed());
        pace.stepped(early, List.of(cue(CueId.LIFT_NOW)));
        assertEquals(1, clock.speed(), "never faster where there is something to read");
    }

    @Test
    void asFastAsItCanItNeverSlowsDown() {
        SessionClock hurried = new SessionClock(now, 30, () -> 0);
        new PracticePace(hurried, 30, AtCues.GO_ON).stepped(start, List.of(cue(CueId.LIFT_NOW)));
        assertEquals(30, hurried.speed());
    }

    private Event cue(CueId id) {
        return new Event.CueGiven(now, id, OptionalDouble.empty());
    }
}
