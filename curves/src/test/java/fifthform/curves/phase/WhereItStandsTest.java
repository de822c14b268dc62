package fifthform.curves.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.engine.TestRecipes;
import fifthform.curves.estimate.Estimate;
import fifthform.curves.estimate.Freshness;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.recipe.Phase;
import fifthform.curves.signal.Trend;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import java.time.Duration;
import java.time.Instant;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Where a bowl is taken to stand after minutes of the same. */
class WhereItStandsTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    /** Two minutes at this rate, seen reading by reading. */
    private static Batch after(Batch batch, double celsius, double kelvinPerMinute, PlaceOdds odds) {
        return after(batch, celsius, s -> kelvinPerMinute, odds);
    }

    /** Two minutes at the rate of each second, K/min. */
    private static Batch after(Batch batch, double celsius, IntToDoubleFunction rate, PlaceOdds odds) {
        Batch seen = batch;
        Window window = Window.EMPTY;
        double there = celsius;
        for (int s = 1; s <= 120; s++) {
            Instant now = START.plusSeconds(s);
            double kelvinPerMinute = rate.applyAsDouble(s);
            there += kelvinPerMinute / 60;
            window = window.with(new Point(now, there, kelvinPerMinute));
            Trend trend = new Trend(there, kelvinPerMinute / 60, 1e-4, 0, 1e-6, 1e-4, 0);
            Estimate estimate = new Estimate(now, there, 0.02, kelvinPerMinute, 0.1, trend, Freshness.FRESH);
            seen = seen.followed(TestRecipes.dark(), estimate, window, odds, now, Duration.ofSeconds(1));
        }
        return seen;
    }

    private static Batch overTheBath(Phase phase) {
        PhaseProgress progress = PhaseProgress.begin(phase, START, Evidence.INFERRED);
        Contact contact = new Contact(Place.BATH, START, Evidence.INFERRED);
        return new Batch(progress, contact, Melted.COOLED_SINCE, Reaction.UNKNOWN);
    }

    /** A full melting bath rises as slowly as a table; taken for one, the batch would never be told to be melted. */
    @Test
    void overTheMeltTheNetworkIsNotAsked() {
        PlaceOdds table = new PlaceOdds(0.04, 0.94, 0.02);
        assertEquals(Place.BATH, after(Batch.atStart(START), 46, 0.8, table).place());
        assertEquals(
                Place.TABLE, after(overTheBath(Phase.REWARM), 30, 0.8, table).place(), "elsewhere it is");
    }

    private static Batch onTheTable(Phase phase) {
        PhaseProgress progress = PhaseProgress.begin(phase, START, Evidence.INFERRED);
        Contact contact = new Contact(Place.TABLE, START.minusSeconds(60), Evidence.INFERRED);
        return new Batch(progress, contact, Melted.COOLED_SINCE, Reaction.UNKNOWN);
    }

    /** Crystals give their heat back; a maker who waits for enough of them has not moved the bowl. */
    @Test
    void whileCrystalsFormASlowRiseIsNoBath() {
        PlaceOdds bath = new PlaceOdds(0.9, 0.1, 0);
        Batch risen = after(onTheTable(Phase.SEED), 27.6, 0.5, bath);
        assertEquals(Place.TABLE, risen.place());
        assertEquals(Place.TABLE, after(risen, 28.6, 0.5, bath).place(), "nor once it has left the cool range");
        assertEquals(Place.BATH, after(onTheTable(Phase.SEED), 27.6, 1.5, bath).place(), "no crystals warm it so fast");
        assertEquals(
                Place.BATH,
                after(onTheTable(Phase.REWARM), 30.2, 0.5, bath).place(),
                "near the range a bath is the greater danger");
    }

    @Test
    void aBowlThatHardlyRisesForAMinuteStandsOnTheTable() {
        assertEquals(
                Place.TABLE,
                after(overTheBath(Phase.WORK), 31.4, 0.05, PlaceOdds.SILENT).place());
        assertEquals(
                Place.BATH,
                after(overTheBath(Phase.WORK), 31.4, 0.3, PlaceOdds.SILENT).place(),
                "a weak bath still warms it");
    }

    /** A spoon that rests for a quarter of a minute slackens a slow rise as a lift does. */
    @Test
    void aSlowRiseThatSlackensIsNoLiftWhereTheNetworkStillSeesTheBath() {
        IntToDoubleFunction rests = s -> s > 105 ? 0.4 : 1;
        Batch rewarming = overTheBath(Phase.REWARM);
        assertEquals(
                Place.TABLE, after(rewarming, 29.5, rests, PlaceOdds.SILENT).place(), "so the rules alone have it");
        assertEquals(
                Place.BATH,
                after(rewarming, 29.5, rests, new PlaceOdds(0.8, 0.2, 0)).place());
        assertEquals(
                Place.BATH,
                after(rewarming, 29.5, rests, new PlaceOdds(0.5, 0.48, 0.02)).place(),
                "in two minds it is no second");
        assertEquals(
                Place.TABLE,
                after(rewarming, 29.5, rests, new PlaceOdds(0.44, 0.54, 0.02)).place());
    }
}
