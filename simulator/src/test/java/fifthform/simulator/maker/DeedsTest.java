package fifthform.simulator.maker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bowl.Blower;
import fifthform.simulator.bowl.ProbePlace;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts.Probe;
import fifthform.simulator.maker.Interruption.FirstAt;
import fifthform.simulator.maker.Interruption.What;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is planned for the hands and what befalls the probe; eight looks a second. */
class DeedsTest {
    private static Watched hands(What what, Spot spot, int after, int lasting, Optional<Duration> every) {
        Interruption one = new Interruption(
                what, new FirstAt(spot), Duration.ofSeconds(after), Duration.ofSeconds(lasting), every);
        return new Watched(Makers.ownWay(Watched.habits(new Plan(1, 0, 33.5, 0, List.of(one))), new Luck(3)));
    }

    @Test
    void warmAirComesAgainAndAgain() {
        Watched hands = hands(What.HAIR_DRYER, Spot.HOT_BATH, 10, 5, Optional.of(Duration.ofSeconds(60)));
        hands.after(140, 30);
        List<Blower> blown = hands.acts.stream().map(a -> a.hands().blower()).toList();
        assertEquals(10 * 8, blown.indexOf(Blower.HAIR_DRYER), 1);
        assertEquals(135 * 8 - 1, blown.lastIndexOf(Blower.HAIR_DRYER), 1);
        assertEquals(
                3 * 5 * 8, blown.stream().filter(b -> b == Blower.HAIR_DRYER).count());
    }

    @Test
    void theBowlGoesBackOnceAndComesOutByItself() {
        Watched hands = hands(What.WARM_BATH, Spot.TABLE, 30, 20, Optional.empty());
        hands.secondsUntil(Spot.COLD_WATER, 48);
        hands.secondsUntil(Spot.TABLE, 27.5);
        assertEquals(30, hands.secondsUntil(Spot.WARM_BATH, 27.8), 0.3);
        assertEquals(20, hands.secondsUntil(Spot.TABLE, 28.2), 0.3);
        assertEquals(Spot.TABLE, hands.after(60, 28.2));
    }

    /** The planned minute begins in the water; the bowl is lifted in the middle of it and stays where it was put. */
    @Test
    void aBowlThatWasMovedMeanwhileIsLeftAlone() {
        Watched hands = hands(What.FRIDGE, Spot.COLD_WATER, 1, 600, Optional.empty());
        hands.secondsUntil(Spot.COLD_WATER, 48);
        assertTrue(hands.secondsUntil(Spot.FRIDGE, 40) < 2);
        hands.secondsUntil(Spot.TABLE, 27.5);
        assertEquals(Spot.TABLE, hands.after(60, 28));
    }

    @Test
    void whatNobodySeesIsSaidByNoKey() {
        Watched hands = hands(What.PROBE_SLIPPED, Spot.HOT_BATH, 5, 10, Optional.empty());
        hands.after(30, 40);
        List<ProbePlace> places =
                hands.acts.stream().map(a -> a.hands().probe()).toList();
        assertEquals(10 * 8, places.stream().filter(p -> p == ProbePlace.OUT).count());
        assertTrue(hands.acts.stream().allMatch(a -> a.probe() == Probe.IN_THE_CHOCOLATE));
        Watched leaning = hands(What.PROBE_AT_WALL, Spot.HOT_BATH, 5, 10, Optional.empty());
        leaning.after(7, 40);
        assertEquals(ProbePlace.AT_WALL, leaning.last().hands().probe());
    }

    @Test
    void waterComesOverTheRimOnce() {
        Watched hands = new Watched(Makers.ownWay(Watched.habits(new Plan(1, 0, 33.5, 12, List.of())), new Luck(3)));
        hands.secondsUntil(Spot.COLD_WATER, 48);
        hands.secondsUntil(Spot.TABLE, 27.5);
        hands.secondsUntil(Spot.WARM_BATH, 28);
        assertEquals(12, hands.acts.stream().mapToDouble(Acts::splashGrams).sum());
    }
}
