package fifthform.curves.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.phase.Evidence;
import fifthform.curves.phase.PlaceOdds;
import fifthform.curves.setup.Approach;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Reason.Rule;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Which second is told, what ends a stay, and how long the forecast must say so. */
class WhenToLiftTest {
    private static final Instant NOW = OverTheBath.START.plusSeconds(60);
    private static final double REACTION_SECONDS =
            OverTheBath.SETUP.reactionTime().toMillis() / 1000.0;

    /** A dip of so many seconds over the bath since a minute: put there unasked, or asked for and counted. */
    private static CueBoard dips(double seconds, boolean counted) {
        return dips(Dip.Purpose.REACH, seconds, counted);
    }

    private static CueBoard dips(Dip.Purpose purpose, double seconds, boolean counted) {
        Instant asked = counted ? OverTheBath.START.minusSeconds(4) : OverTheBath.START;
        Dip dip = new Dip(
                Dip.Stage.OVER_BATH, purpose, asked, seconds, OverTheBath.START, 30.2, 0, 31.2, 1, Optional.empty());
        LiftWait waited = new LiftWait(Optional.of(NOW.minusSeconds(30)), Optional.empty());
        return new CueBoard(
                Map.of(),
                waited,
                Dips.NONE.with(dip),
                new Done(0, Done.Seed.NOT_ASKED, Optional.empty(), Optional.empty()),
                Held.NOT_YET);
    }

    private static CueBoard next(Approach approach, Evidence evidence, double secondsToLift, boolean counted) {
        OverTheBath bowl = new OverTheBath(approach, evidence, PlaceOdds.SILENT);
        return CueRules.next(bowl.at(NOW, secondsToLift), dips(10, counted));
    }

    @Test
    void onlyWhoWantsDipsIsToldToLiftBySeconds() {
        CueBoard dips = next(Approach.TOUCHES_WHERE_UNSURE, Evidence.TOLD, 200, false);
        assertEquals(Rule.DIP_IS_OVER, dips.open().get(CueId.LIFT_NOW).reason().rule());
        assertFalse(next(Approach.ONE_LIFT, Evidence.TOLD, 200, false).isOpen(CueId.LIFT_NOW));
        assertTrue(next(Approach.TOUCHES_WHERE_UNSURE, Evidence.TOLD, 200, true).isOpen(CueId.OFF_NOW));
        assertEquals(Map.of(), next(Approach.ONE_LIFT, Evidence.TOLD, 200, true).open());
    }

    /** A touch that holds the range is counted, however its maker wants to come up to it. */
    @Test
    void aTouchThatHoldsIsEndedByItsSeconds() {
        OverTheBath bowl = new OverTheBath(Approach.ONE_LIFT, Evidence.TOLD, PlaceOdds.SILENT);
        CueBoard after = CueRules.next(bowl.at(NOW, 200), dips(Dip.Purpose.HOLD, 10, true));
        assertTrue(after.isOpen(CueId.OFF_NOW), after.open().toString());
    }

    /** Where the last lift fell short a dip is asked for; a bowl that then stays on must still be told its second. */
    @Test
    void whoWantsOneLiftIsToldItsSecondEvenWhereTheStayBeganAsADip() {
        CueBoard told = next(Approach.ONE_LIFT, Evidence.TOLD, -1, true);
        assertEquals(
                Rule.TURN_REACHES_AIM, told.open().get(CueId.LIFT_NOW).reason().rule());
        assertFalse(next(Approach.ONE_LIFT, Evidence.INFERRED, -1, true).isOpen(CueId.LIFT_NOW), "it may be the coast");
        OverTheBath bowl = new OverTheBath(Approach.ONE_LIFT, Evidence.TOLD, PlaceOdds.SILENT);
        CueBoard counting = CueRules.next(bowl.at(NOW, -1), dips(58, true));
        assertFalse(counting.isOpen(CueId.LIFT_NOW), "whoever counts seconds lifts by them");
    }

    /** Who waits for one lift goes by where it turns, never by how wide the band is; the aim is told with it. */
    @Test
    void whoWantsOneLiftIsToldWhereItIsAimed() {
        OverTheBath bowl = new OverTheBath(Approach.ONE_LIFT, Evidence.TOLD, PlaceOdds.SILENT);
        Reason ready = CueRules.next(bowl.at(NOW, 12), CueBoard.empty())
                .open()
                .get(CueId.GET_READY)
                .reason();
        assertEquals(Rule.TURN_REACHES_AIM, ready.rule());
        double aim = ready.figure(Figure.AIM_C).orElseThrow();
        assertTrue(OverTheBath.SETUP.recipe().work().range().contains(aim), "aimed at " + aim);
        Reason now = next(Approach.ONE_LIFT, Evidence.TOLD, -1, true)
                .open()
                .get(CueId.LIFT_NOW)
                .reason();
        assertEquals(aim, now.figure(Figure.AIM_C).orElseThrow());
    }

    /** When the lift is first told, by the seconds that the forecast has left at each half second; empty if never. */
    private static Optional<Duration> firstTold(double seconds, DoubleUnaryOperator secondsToLift) {
        OverTheBath bowl = new OverTheBath(Approach.ONE_LIFT, Evidence.TOLD, PlaceOdds.SILENT);
        CueBoard board = CueBoard.empty();
        for (int i = 0; i <= 2 * seconds; i++) {
            Instant now = OverTheBath.START.plusMillis(500L * i);
            board = CueRules.next(bowl.at(now, secondsToLift.applyAsDouble(i / 2.0)), board);
            if (board.isOpen(CueId.LIFT_NOW)) return Optional.of(Duration.between(OverTheBath.START, now));
        }
        return Optional.empty();
    }

    /** A spoon that rests, a tip that leans on the wall: reached for a moment, and not near before or after it. */
    @Test
    void twoSecondsBeyondTheAimAreNoCueAndFourAre() {
        assertEquals(Optional.empty(), firstTold(60, s -> s >= 20 && s < 22 ? -5 : 40));
        assertEquals(Optional.empty(), firstTold(60, s -> s % 4 < 2 ? -5 : 40), "nor are they one after another");
        assertEquals(Optional.of(Duration.ofSeconds(24)), firstTold(60, s -> s >= 20 ? -5 : 40));
    }

    /** The four seconds are begun before the second itself comes: where it comes steadily nothing is lost. */
    @Test
    void aBowlThatComesUpSteadilyIsToldNoLater() {
        Duration due = Duration.ofMillis(Math.round(1000 * (30 - REACTION_SECONDS)));
        assertEquals(Optional.of(due), firstTold(60, s -> 30 - s));
        Duration quick = Duration.ofMillis(Math.round(500 * Math.ceil((30 - REACTION_SECONDS) / 1.5 * 2)));
        assertTrue(
                firstTold(60, s -> 30 - 1.5 * s).orElseThrow().compareTo(quick.plusMillis(1500)) <= 0,
                "one whose rate grows loses a second and a half at most");
    }
}
