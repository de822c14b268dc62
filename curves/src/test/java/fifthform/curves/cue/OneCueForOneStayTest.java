package fifthform.curves.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.estimate.Freshness;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Course;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Hindsight;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.phase.Batch;
import fifthform.curves.phase.Contact;
import fifthform.curves.phase.Evidence;
import fifthform.curves.phase.PlaceOdds;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import fifthform.curves.signal.Trend;
import fifthform.curves.signal.Window;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.situation.Situation;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A cue to lift that has come and gone is not given again to a bowl that only seems to stand over the bath. */
class OneCueForOneStayTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final Instant NOW = START.plusSeconds(60);
    private static final Setup SETUP = TestRecipes.setup().withApproach(Approach.ONE_LIFT);

    /** Over the bath since a minute, rising, the second to lift just past. */
    private static Situation due(Evidence evidence, PlaceOdds odds) {
        Estimate estimate = new Estimate(
                NOW, 31.2, 0.02, 1, 0.1, new Trend(31.2, 1 / 60.0, 1e-4, 0, 1e-6, 1e-4, 0), Freshness.FRESH);
        Outlook turn = new Outlook(31.6, 31.4, 31.8, 30);
        Course course = new Course(Place.BATH, 31.2, 1 / 60.0, 0, 45, 45);
        Optional<Instant> liftAt = Optional.of(NOW.minusSeconds(1));
        Forecast forecast = new Forecast(NOW, turn, turn, liftAt, course, 0.001, 0.02, Hindsight.NONE);
        Batch told = Batch.atStart(START).confirmed(Phase.REWARM, START);
        Contact stands = new Contact(Place.BATH, START, evidence);
        return new Situation(
                SETUP,
                NOW,
                Track.silentSince(START),
                Optional.empty(),
                ProbePlace.IN_THE_CHOCOLATE,
                Optional.of(estimate),
                Window.EMPTY,
                new Batch(told.progress(), stands, told.melted(), told.reaction()),
                odds,
                Optional.empty(),
                Coasting.atStart(SETUP),
                Optional.of(forecast),
                Optional.empty(),
                Optional.empty());
    }

    private static boolean lifts(Evidence evidence, PlaceOdds odds, Optional<Instant> liftedAt) {
        LiftWait reached = new LiftWait(Optional.of(NOW.minusSeconds(5)), Optional.empty());
        CueBoard before = new CueBoard(Map.of(), reached, Dips.NONE, new Done(0, Optional.empty(), liftedAt));
        return CueRules.next(due(evidence, odds), before).isOpen(CueId.LIFT_NOW);
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
