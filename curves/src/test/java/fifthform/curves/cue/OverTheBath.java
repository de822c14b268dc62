package fifthform.curves.cue;

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
import java.util.Optional;

/**
 * A bowl over the bath on its way up, at 31.2 °C and 1 K/min, for tests that choose the forecast's second themselves.
 *
 * @param approach what its maker wants
 * @param evidence how it is known to stand there
 * @param odds what the network says of that
 */
record OverTheBath(Approach approach, Evidence evidence, PlaceOdds odds) {
    /** Since then it stands there. */
    static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    static final Setup SETUP = TestRecipes.setup();

    /** At this moment, with so many seconds left to the one in which it must leave the water. */
    Situation at(Instant now, double secondsToLift) {
        Estimate estimate = new Estimate(
                now, 31.2, 0.02, 1, 0.1, new Trend(31.2, 1 / 60.0, 1e-4, 0, 1e-6, 1e-4, 0), Freshness.FRESH);
        Outlook turn = new Outlook(31.6, 31.4, 31.8, 30);
        Course course = new Course(Place.BATH, 31.2, 1 / 60.0, 0, 45, 45);
        Optional<Instant> liftAt = Optional.of(now.plusMillis(Math.round(1000 * secondsToLift)));
        Forecast forecast = new Forecast(now, turn, turn, liftAt, course, 0.001, 0.02, Hindsight.NONE);
        Batch told = Batch.atStart(START).confirmed(Phase.REWARM, START);
        Contact stands = new Contact(Place.BATH, START, evidence);
        return new Situation(
                SETUP.withApproach(approach),
                now,
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
                Optional.empty(),
                Optional.empty());
    }
}
