package fifthform.curves.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.estimate.Freshness;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.forecast.Course;
import fifthform.curves.forecast.Forecast;
import fifthform.curves.forecast.Hindsight;
import fifthform.curves.forecast.Outlook;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.phase.Batch;
import fifthform.curves.phase.PlaceOdds;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Track;
import fifthform.curves.signal.Trend;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import fifthform.curves.situation.Opinion;
import fifthform.curves.situation.ProbePlace;
import fifthform.curves.situation.Reason;
import fifthform.curves.situation.Reason.Figure;
import fifthform.curves.situation.Situation;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * What a rise or a hot reading is worth as a warning. The recipe works at 31 to 32 °C, warns at 32.5, guards at 33.0 and
 * melts out at 33.8.
 */
class ContestedHeatTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final Setup SETUP = TestRecipes.setup();

    /** A minute of readings that go straight to where they are now, with a forecast of the turning point. */
    private static Situation rising(
            Phase phase,
            Place place,
            double celsius,
            double kelvinPerMinute,
            double turnCelsius,
            Optional<Opinion> opinion) {
        Window window = Window.EMPTY;
        Instant now = START.plusSeconds(60);
        for (int s = 0; s <= 60; s++) {
            double then = celsius - kelvinPerMinute * (60 - s) / 60;
            window = window.with(new Point(START.plusSeconds(s), then, kelvinPerMinute));
        }
        return situation(phase, place, window, now, celsius, kelvinPerMinute, turnCelsius, opinion);
    }

    /** A tip in chocolate of 31.5 °C that has read more for so long. */
    private static Situation leaning(double celsius, int seconds, double highestCelsius) {
        Window window = Window.EMPTY;
        Instant now = START.plusSeconds(60);
        for (int s = 0; s <= 60; s++) {
            window = window.with(new Point(START.plusSeconds(s), s >= 60 - seconds ? celsius : 31.5, 0));
        }
        Optional<Opinion> opinion = Optional.of(new Opinion(highestCelsius));
        return situation(Phase.WORK, Place.TABLE, window, now, celsius, 0, celsius, opinion);
    }

    private static Situation situation(
            Phase phase,
            Place place,
            Window window,
            Instant now,
            double celsius,
            double kelvinPerMinute,
            double turnCelsius,
            Optional<Opinion> opinion) {
        Trend trend = new Trend(celsius, kelvinPerMinute / 60, 1e-4, 0, 1e-6, 1e-4, 0);
        Estimate estimate = new Estimate(now, celsius, 0.02, kelvinPerMinute, 0.1, trend, Freshness.FRESH);
        Outlook turn = new Outlook(turnCelsius, turnCelsius - 0.5, turnCelsius + 0.5, 30);
        Course course = new Course(place, celsius, kelvinPerMinute / 60, 0, 45, 45);
        Forecast forecast = new Forecast(now, turn, turn, Optional.empty(), course, 0.001, 0.02, Hindsight.NONE);
        Track bowl = Track.silentSince(START)
                .with(sample(now.minusMillis(500), celsius), Correction.UNCHECKED)
                .with(sample(now, celsius), Correction.UNCHECKED);
        return new Situation(
                SETUP,
                now,
                bowl,
                Optional.empty(),
                ProbePlace.IN_THE_CHOCOLATE,
                Optional.of(estimate),
                window,
                Batch.atStart(START).confirmed(phase, START).moved(place, START),
                PlaceOdds.SILENT,
                opinion,
                Coasting.atStart(SETUP),
                Optional.of(forecast),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Sample sample(Instant at, double celsius) {
        return new Sample(at, new ProbeId("bowl"), celsius, 0.02, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static Condition of(AlarmId id, Situation situation) {
        return new AlarmConditions(situation).of(id).condition();
    }

    @Test
    void whatTurnsBetweenTheRangeAndTheWarningIsTheCuesBusiness() {
        Situation steady = rising(Phase.WORK, Place.BATH, 31.8, 0.5, 32.4, Optional.empty());
        assertEquals(Condition.BETWEEN, of(AlarmId.HEADING_OVER, steady));
        Situation further = rising(Phase.WORK, Place.BATH, 31.8, 0.5, 32.6, Optional.empty());
        assertEquals(Condition.MET, of(AlarmId.HEADING_OVER, further));
    }

    @Test
    void noiseIsNoRise() {
        Situation still = rising(Phase.WORK, Place.BATH, 32.4, 0.05, 32.6, Optional.empty());
        assertEquals(Condition.OVER, of(AlarmId.HEADING_OVER, still));
    }

    @Test
    void onTheWayUpAHardPushWarnsAtTheEndOfTheRange() {
        Situation hard = rising(Phase.REWARM, Place.BATH, 31.9, 3, 31.9, Optional.empty());
        assertEquals(Condition.MET, of(AlarmId.HEADING_OVER, hard), "hands need seconds, and it goes on meanwhile");
        Situation mild = rising(Phase.REWARM, Place.BATH, 31.9, 0.5, 32.1, Optional.empty());
        assertEquals(Condition.OVER, of(AlarmId.HEADING_OVER, mild));
        Situation coast = rising(Phase.WORK, Place.BATH, 31.9, 3, 31.9, Optional.empty());
        assertEquals(Condition.OVER, of(AlarmId.HEADING_OVER, coast));
    }

    /** The figure is how far what passes the limit passes it, also where a lift at this moment would stay within. */
    @Test
    void howFarPastTheLimitIsNeverLessThanNothing() {
        Situation hard = rising(Phase.REWARM, Place.BATH, 31.9, 3, 31.9, Optional.empty());
        Reason why = new AlarmConditions(hard).of(AlarmId.HEADING_OVER).reason().orElseThrow();
        double ahead = why.figure(Figure.AHEAD_C).orElseThrow();
        assertEquals(ahead - 32, why.figure(Figure.PAST_LIMIT_K).orElseThrow(), 1e-9);
        assertTrue(ahead > 32, why.toString());
    }

    @Test
    void aTurnThatTheNetworkRulesOutIsNotWarnedOf() {
        Situation denied = rising(Phase.WORK, Place.TABLE, 31.8, 1, 33.2, Optional.of(new Opinion(32.2)));
        assertEquals(Condition.BETWEEN, of(AlarmId.HEADING_OVER, denied));
        Situation possible = rising(Phase.WORK, Place.TABLE, 31.8, 1, 33.2, Optional.of(new Opinion(32.7)));
        assertEquals(Condition.MET, of(AlarmId.HEADING_OVER, possible));
    }

    @Test
    void aTipThatLeansOnAWarmWallIsNotNearMeltOutForAQuarterOfAMinute() {
        assertEquals(Condition.BETWEEN, of(AlarmId.NEAR_MELT_OUT, leaning(33.4, 14, 32.0)));
        assertEquals(Condition.MET, of(AlarmId.NEAR_MELT_OUT, leaning(33.4, 16, 32.0)), "what stays is believed");
        assertEquals(Condition.MET, of(AlarmId.NEAR_MELT_OUT, leaning(33.4, 2, 33.1)), "nobody contests it");
    }

    @Test
    void nobodyWaitsLongForTheLastLimit() {
        assertEquals(Condition.BETWEEN, of(AlarmId.MELT_OUT, leaning(34.2, 7, 32.0)));
        assertEquals(Condition.MET, of(AlarmId.MELT_OUT, leaning(34.2, 9, 32.0)));
        assertEquals(Condition.MET, of(AlarmId.MELT_OUT, leaning(34.2, 2, 33.9)));
    }
}
