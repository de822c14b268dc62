package fifthform.simulator.maker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.alarm.Priority;
import fifthform.curves.cue.CueId;
import fifthform.curves.engine.Event.AlarmRaised;
import fifthform.curves.engine.Event.CueGiven;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What the hands do about what is said and shown. */
class MakersTest {
    private static final Habits HABITS =
            new Habits(Duration.ofMillis(2500), 0.35, 47, 28, Duration.ofMinutes(5), 31.5, Duration.ofMinutes(6));

    private Instant now = Instant.parse("2026-01-10T09:00:00Z");

    private static Maker following() {
        return new FollowsCues(HABITS, new SplittableRandom(1));
    }

    /** The spot after some seconds in which the thermometer shows this. */
    private Spot after(Maker maker, double seconds, double shownCelsius) {
        Spot spot = maker.next(view(shownCelsius)).spot();
        for (int eighths = 0; eighths < seconds * 8; eighths++) {
            now = now.plusMillis(125);
            spot = maker.next(view(shownCelsius)).spot();
        }
        return spot;
    }

    private KitchenView view(double shownCelsius) {
        return new KitchenView(now, OptionalDouble.of(shownCelsius));
    }

    private void tell(Maker maker, CueId cue, double figure) {
        maker.told(new CueGiven(now, cue, OptionalDouble.of(figure)));
    }

    private void raise(Maker maker, AlarmId alarm) {
        maker.told(new AlarmRaised(now, alarm, Priority.URGENT, OptionalDouble.empty()));
    }

    @Test
    void eachCueIsObeyedAReactionTimeLater() {
        Maker maker = following();
        assertEquals(Spot.HOT_BATH, after(maker, 60, 40));
        tell(maker, CueId.MELTED, 47);
        assertEquals(Spot.HOT_BATH, after(maker, 0.5, 47), "quicker than hands are");
        assertEquals(Spot.COLD_WATER, after(maker, 10, 47));
        tell(maker, CueId.STOP_COOLING, 28);
        assertEquals(Spot.TABLE, after(maker, 10, 28));
        tell(maker, CueId.CRYSTALS_ENOUGH, 28);
        assertEquals(Spot.WARM_BATH, after(maker, 10, 28));
        tell(maker, CueId.GET_READY, 15);
        assertEquals(Spot.WARM_BATH, after(maker, 10, 30));
        tell(maker, CueId.LIFT_NOW, 31);
        assertEquals(Spot.TABLE, after(maker, 10, 31));
        tell(maker, CueId.PUT_BACK, 20);
        assertEquals(Spot.WARM_BATH, after(maker, 12, 31));
        assertEquals(Spot.TABLE, after(maker, 20, 31));
        tell(maker, CueId.IN_RANGE, 31);
        after(maker, 5 * 60, 31);
        assertFalse(maker.done());
        after(maker, 2 * 60, 31);
        assertTrue(maker.done());
    }

    @Test
    void aCueOutOfPlaceMovesNothing() {
        Maker maker = following();
        after(maker, 10, 40);
        tell(maker, CueId.LIFT_NOW, 31);
        tell(maker, CueId.IN_RANGE, 31);
        assertEquals(Spot.HOT_BATH, after(maker, 20, 40));
    }

    @Test
    void headingOverLiftsFirstAndCoolsOnAClothAfterwards() {
        Maker maker = atTheWarmBath();
        raise(maker, AlarmId.HEADING_OVER);
        assertEquals(Spot.TABLE, after(maker, 10, 31));
        raise(maker, AlarmId.NEAR_MELT_OUT);
        assertEquals(Spot.COOL_CLOTH, after(maker, 10, 33));
        assertEquals(Spot.TABLE, after(maker, 15, 33));
    }

    private Maker atTheWarmBath() {
        Maker maker = following();
        after(maker, 1, 40);
        for (CueId cue : List.of(CueId.MELTED, CueId.STOP_COOLING, CueId.CRYSTALS_ENOUGH)) {
            tell(maker, cue, 0);
            after(maker, 12, 28);
        }
        assertEquals(Spot.WARM_BATH, after(maker, 1, 28));
        return maker;
    }

    @Test
    void theKeysPressedAreTheMovesMade() {
        Maker maker = atTheWarmBath();
        raise(maker, AlarmId.OVER_RANGE);
        after(maker, 10, 33);
        List<Place> places =
                maker.presses().stream().map(a -> ((BowlMoved) a).to()).toList();
        assertEquals(List.of(Place.BATH, Place.COLD_WATER, Place.TABLE, Place.BATH, Place.TABLE), places);
        assertEquals(List.of(), maker.presses(), "told twice");
    }

    @Test
    void nobodyWaitsForACueForEver() {
        Maker maker = following();
        int minutes = 0;
        while (!maker.done() && minutes++ < 300) after(maker, 60, 30);
        assertTrue(minutes > 60 && minutes < 120, minutes + " min");
    }

    @Test
    void farPastTheAimNobodyWaitsForACue() {
        Maker maker = following();
        after(maker, 10, 40);
        assertEquals(Spot.COLD_WATER, after(maker, 1, 51));
        assertEquals(Spot.TABLE, after(maker, 1, 24));
    }

    @Test
    void ownWayGoesByTheThermometerAndIsDeaf() {
        Maker maker = new OwnWay(HABITS, new SplittableRandom(3));
        tell(maker, CueId.MELTED, 47);
        assertEquals(Spot.HOT_BATH, after(maker, 60, 46.9));
        assertEquals(Spot.COLD_WATER, after(maker, 20, 47));
        assertEquals(Spot.COLD_WATER, after(maker, 60, 28.1));
        assertEquals(Spot.TABLE, after(maker, 20, 28));
        assertEquals(Spot.WARM_BATH, after(maker, 5 * 60, 27.5));
        tell(maker, CueId.LIFT_NOW, 31);
        assertEquals(Spot.WARM_BATH, after(maker, 60, 31.4));
        assertEquals(Spot.TABLE, after(maker, 20, 31.5));
    }

    /** The median of a log-normal is exp(μ), and 68 % lie within a factor exp(σ) of it. */
    @Test
    void reactionTimesAreLogNormal() {
        Reaction reaction = new Reaction(HABITS, new SplittableRandom(7));
        int below = 0;
        int within = 0;
        int draws = 20_000;
        for (int i = 0; i < draws; i++) {
            double seconds = reaction.draw().toMillis() / 1000.0;
            if (seconds < 2.5) below++;
            if (Math.abs(StrictMath.log(seconds / 2.5)) < 0.35) within++;
        }
        assertEquals(0.5, below / (double) draws, 0.015);
        assertEquals(0.683, within / (double) draws, 0.015);
    }
}
