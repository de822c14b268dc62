package fifthform.curves.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.phase.Evidence;
import fifthform.curves.phase.PlaceOdds;
import fifthform.curves.setup.Approach;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A cue to lift that has come and gone is not given again to a bowl that only seems to stand over the bath. */
class OneCueForOneStayTest {
    private static final Instant START = OverTheBath.START;
    private static final Instant NOW = START.plusSeconds(60);

    private static boolean lifts(Evidence evidence, PlaceOdds odds, Optional<Instant> liftedAt) {
        LiftWait reached = new LiftWait(Optional.of(NOW.minusSeconds(5)), Optional.empty());
        CueBoard before = new CueBoard(
                Map.of(),
                reached,
                Dips.NONE,
                new Done(0, Done.Seed.NOT_ASKED, Optional.empty(), liftedAt),
                Held.NOT_YET);
        return CueRules.next(new OverTheBath(Approach.ONE_LIFT, evidence, odds).at(NOW, -1), before)
                .isOpen(CueId.LIFT_NOW);
    }

    @Test
    void theKeyOfTheWayBackMayHaveBeenForgotten() {
        assertEquals(true, lifts(Evidence.TOLD, PlaceOdds.SILENT, Optional.empty()));
        assertEquals(false, lifts(Evidence.TOLD, PlaceOdds.SILENT, Optional.of(NOW.minusSeconds(20))));
        assertEquals(
                true, lifts(Evidence.TOLD, PlaceOdds.SILENT, Optional.of(START.minusSeconds(9))), "put back since");
    }

    @Test
    void onceLiftedABathThatOnlyTheCurveShowsMayBeACoast() {
        assertEquals(true, lifts(Evidence.INFERRED, PlaceOdds.SILENT, Optional.empty()));
        assertEquals(false, lifts(Evidence.INFERRED, PlaceOdds.SILENT, Optional.of(START.minusSeconds(9))));
        PlaceOdds sure = new PlaceOdds(0.98, 0.02, 0);
        assertEquals(true, lifts(Evidence.INFERRED, sure, Optional.of(START.minusSeconds(9))), "left over the bath");
        PlaceOdds likely = new PlaceOdds(0.95, 0.05, 0);
        assertEquals(
                false,
                lifts(Evidence.INFERRED, likely, Optional.of(START.minusSeconds(9))),
                "hands that work it warm it much as a bath does");
    }
}
