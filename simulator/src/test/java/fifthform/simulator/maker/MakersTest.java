package fifthform.simulator.maker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.cue.CueId;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.Place;
import fifthform.simulator.bowl.Spot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the hands do about what is said and shown. */
class MakersTest {
    private static Watched following() {
        return new Watched(Makers.followsCues(Watched.HABITS, new Luck(1)));
    }

    @Test
    void eachCueIsObeyedAReactionTimeLater() {
        Watched maker = following();
        assertEquals(Spot.HOT_BATH, maker.after(60, 40));
        maker.tell(CueId.MELTED, 47);
        assertEquals(Spot.HOT_BATH, maker.after(0.5, 47), "quicker than hands are");
        assertEquals(Spot.COLD_WATER, maker.after(10, 47));
        maker.tell(CueId.STOP_COOLING, 28);
        assertEquals(Spot.TABLE, maker.after(10, 28));
        maker.tell(CueId.CRYSTALS_ENOUGH);
        assertEquals(Spot.WARM_BATH, maker.after(10, 28));
        maker.tell(CueId.GET_READY, 15);
        assertEquals(Spot.WARM_BATH, maker.after(10, 30));
        maker.tell(CueId.LIFT_NOW, 31);
        assertEquals(Spot.TABLE, maker.after(10, 31));
        maker.tell(CueId.PUT_BACK, 20);
        assertEquals(Spot.WARM_BATH, maker.after(12, 31));
        assertEquals(Spot.TABLE, maker.after(20, 31));
        maker.tell(CueId.IN_RANGE, 31);
        maker.after(5 * 60, 31);
        assertFalse(maker.maker.done());
        maker.after(2 * 60, 31);
        assertTrue(maker.maker.done());
    }

    @Test
    void aCueOutOfPlaceMovesNothing() {
        Watched maker = following();
        maker.after(10, 40);
        maker.tell(CueId.LIFT_NOW, 31);
        maker.tell(CueId.IN_RANGE, 31);
        assertEquals(Spot.HOT_BATH, maker.after(20, 40));
    }

    @Test
    void headingOverLiftsFirstAndCoolsOnAClothAfterwards() {
        Watched maker = following().warming();
        maker.raise(AlarmId.HEADING_OVER);
        assertEquals(Spot.TABLE, maker.after(10, 31));
        maker.raise(AlarmId.NEAR_MELT_OUT);
        assertEquals(Spot.COOL_CLOTH, maker.after(10, 33));
        assertEquals(Spot.TABLE, maker.after(15, 33));
    }

    @Test
    void theKeysPressedAreTheMovesMade() {
        Watched maker = following().warming();
        maker.raise(AlarmId.OVER_RANGE);
        maker.after(10, 33);
        List<Place> places =
                maker.presses.stream().map(a -> ((BowlMoved) a).to()).toList();
        assertEquals(List.of(Place.BATH, Place.COLD_WATER, Place.TABLE, Place.BATH, Place.TABLE), places);
    }

    @Test
    void nobodyWaitsForACueForEver() {
        Watched maker = following();
        int minutes = 0;
        while (!maker.maker.done() && minutes++ < 300) maker.after(60, 30);
        assertTrue(minutes > 60 && minutes < 120, minutes + " min");
    }

    @Test
    void farPastTheAimNobodyWaitsForACue() {
        Watched maker = following();
        maker.after(10, 40);
        assertEquals(Spot.COLD_WATER, maker.after(1, 51));
        assertEquals(Spot.TABLE, maker.after(1, 24));
    }

    @Test
    void ownWayGoesByTheThermometerAndIsDeaf() {
        Watched maker = new Watched(Makers.ownWay(Watched.HABITS, new Luck(3)));
        maker.tell(CueId.MELTED, 47);
        assertEquals(Spot.HOT_BATH, maker.after(60, 46.9));
        assertEquals(Spot.COLD_WATER, maker.after(20, 47));
        assertEquals(Spot.COLD_WATER, maker.after(60, 28.1));
        assertEquals(Spot.TABLE, maker.after(20, 28));
        assertEquals(Spot.WARM_BATH, maker.after(5 * 60, 27.5));
        maker.tell(CueId.LIFT_NOW, 31);
        assertEquals(Spot.WARM_BATH, maker.after(60, 31.4));
        assertEquals(Spot.TABLE, maker.after(20, 31.5));
    }

    /** The median of a log-normal is exp(μ), and 68 % lie within a factor exp(σ) of it. */
    @Test
    void reactionTimesAreLogNormal() {
        Reaction reaction = Reaction.of(Watched.HABITS, new Luck(7));
        int below = 0;
        int within = 0;
        int draws = 20_000;
        for (int i = 0; i < draws; i++) {
            double seconds = reaction.delay().toMillis() / 1000.0;
            reaction = reaction.after();
            if (seconds < 2.5) below++;
            if (Math.abs(StrictMath.log(seconds / 2.5)) < 0.35) within++;
        }
        assertEquals(0.5, below / (double) draws, 0.015);
        assertEquals(0.683, within / (double) draws, 0.015);
    }

    /** A first short dip: over the water for the seconds named, then off again, unasked. */
    @Test
    void whoIsAskedForAFirstDipCountsItsSeconds() {
        Watched maker = new Watched(Makers.followsCues(Watched.HABITS, new Luck(1)));
        maker.after(1, 40);
        maker.tell(CueId.MELTED);
        maker.after(60, 30);
        maker.tell(CueId.STOP_COOLING);
        maker.after(60, 28);
        maker.tell(CueId.CRYSTALS_ENOUGH, 5);
        maker.secondsUntil(Spot.WARM_BATH, 28);
        assertEquals(5, maker.secondsUntil(Spot.TABLE, 28), 0.2);
        maker.tell(CueId.PUT_BACK, 12);
        maker.secondsUntil(Spot.WARM_BATH, 29);
        assertEquals(12, maker.secondsUntil(Spot.TABLE, 29), 0.2);
        maker.tell(CueId.TOUCH_OF_WARMTH, 3);
        maker.secondsUntil(Spot.WARM_BATH, 31);
        assertEquals(3, maker.secondsUntil(Spot.TABLE, 31), 0.2);
    }
}
