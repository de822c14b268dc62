package fifthform.monitor.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.recipe.Phase;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.KitchenView;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What keys say is what the hands do. */
class OwnHandsTest {
    private static final Instant AT = Instant.parse("2026-02-03T15:00:00Z");

    private final OwnHands hands = new OwnHands();

    @Test
    void theBowlGoesWhereTheKeySaysAndIntoTheWaterOfItsPhase() {
        assertEquals(Spot.HOT_BATH, look(0).hands().spot());
        hands.did(new BowlMoved(AT, Place.COLD_WATER), Phase.MELT);
        assertEquals(Spot.COLD_WATER, look(1).hands().spot());
        hands.did(new Undone(AT, 1), Phase.COOL);
        assertEquals(Spot.HOT_BATH, look(2).hands().spot());
        hands.did(new PhaseConfirmed(AT, Phase.COOL), Phase.MELT);
        hands.did(new BowlMoved(AT, Place.TABLE), Phase.COOL);
        hands.did(new BowlMoved(AT, Place.BATH), Phase.REWARM);
        assertEquals(Spot.WARM_BATH, look(3).hands().spot());
        assertEquals(
                List.of(Spot.COLD_WATER, Spot.HOT_BATH, Spot.WARM_BATH),
                hands.moves().stream().map(OwnHands.Move::to).toList());
    }

    @Test
    void seedIsThrownInOnceAndStaysInWhateverIsTakenBack() {
        hands.did(new SeedAdded(AT, 30), Phase.COOL);
        hands.did(new SeedAdded(AT, 20), Phase.COOL);
        hands.did(new Undone(AT, 1), Phase.COOL);
        assertEquals(50, look(0).seedGrams());
        assertEquals(0, look(1).seedGrams());
    }

    @Test
    void onlyALiftedBowlIsDriedAndOnlyForAWhile() {
        hands.wipe();
        assertEquals(Towel.LEFT, look(0).hands().towel());
        hands.did(new BowlMoved(AT, Place.TABLE), Phase.MELT);
        hands.wipe();
        assertEquals(Towel.WIPING, look(20).hands().towel());
        assertEquals(Towel.LEFT, look(40).hands().towel());
        assertEquals(2, hands.timesWiped());
    }

    @Test
    void stirringIsCountedAndTheHandsCanLeave() {
        look(0);
        hands.did(new StirringSaid(AT, Stirring.STIRRED), Phase.MELT);
        assertTrue(look(10).hands().stirVigourFraction() > 0);
        hands.did(new StirringSaid(AT, Stirring.STILL), Phase.MELT);
        look(40);
        assertEquals(0.25, hands.stirredFraction(), 1e-9);
        assertFalse(hands.done());
        hands.finish();
        assertTrue(hands.done());
    }

    private Acts look(long second) {
        return hands.next(new KitchenView(AT.plus(Duration.ofSeconds(second)), OptionalDouble.empty()))
                .acts();
    }
}
