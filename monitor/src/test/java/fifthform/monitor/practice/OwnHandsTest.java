package fifthform.monitor.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.input.MakerAction.PhaseConfirmed;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.MakerAction.SampleProved;
import fifthform.curves.input.MakerAction.SeedAdded;
import fifthform.curves.input.MakerAction.StirringSaid;
import fifthform.curves.input.MakerAction.StirringSaid.Stirring;
import fifthform.curves.input.MakerAction.Undone;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.simulator.bowl.Blower;
import fifthform.simulator.bowl.Hands.Towel;
import fifthform.simulator.bowl.Spot;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Plan;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
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

    private static Plan planned(Beginning beginning, Optional<Holding.Warmth> warmth) {
        Plan usual = new Plan(1, 0, 26, 0, List.of()).beginningWith(beginning);
        return warmth.map(by -> usual.holding(new Holding(Duration.ofMinutes(30), by), 30))
                .orElse(usual);
    }

    @Test
    void whatIsInTemperStandsOnTheTableFirst() {
        OwnHands kept = OwnHands.of(planned(new Beginning.InTemper(), Optional.empty()));
        assertEquals(Spot.TABLE, look(kept, 0).hands().spot());
        assertEquals(
                Spot.HOT_BATH,
                look(OwnHands.of(planned(new Beginning.Again("demo"), Optional.empty())), 0)
                        .hands()
                        .spot());
    }

    @Test
    void aProvedBowlGoesIntoTheBoxAndTheBoxIsTurnedOnceForOneCue() {
        OwnHands boxed = OwnHands.of(planned(new Beginning.InTemper(), Optional.of(Holding.Warmth.BOX)));
        boxed.did(new SampleProved(AT, SampleProved.Verdict.IN_TEMPER), Phase.WORK);
        assertEquals(Spot.WARM_BOX, look(boxed, 0).hands().spot());
        boxed.turnBox(AT, 1.5);
        boxed.turnBox(AT, 1.5);
        assertEquals(31.5, look(boxed, 1).hands().boxCelsius());
        boxed.turnBox(AT.plusSeconds(600), -0.5);
        assertEquals(31, look(boxed, 2).hands().boxCelsius());
    }

    @Test
    void warmAirBlowsForAsLongAsItWasAskedFor() {
        OwnHands airy = OwnHands.of(planned(new Beginning.InTemper(), Optional.of(Holding.Warmth.AIR)));
        airy.blow(AT, 6);
        assertEquals(Blower.HAIR_DRYER, look(airy, 0).hands().blower());
        airy.blow(AT, 6);
        assertEquals(Blower.HAIR_DRYER, look(airy, 5).hands().blower());
        assertEquals(Blower.OFF, look(airy, 7).hands().blower());
    }

    @Test
    void hotWaterThatWasAskedForOnceIsPouredOnce() {
        assertTrue(hands.warmBath(AT));
        assertFalse(hands.warmBath(AT));
        assertEquals(3, look(0).bathWarmerKelvin());
        assertEquals(0, look(1).bathWarmerKelvin());
        assertTrue(hands.warmBath(AT.plusSeconds(300)));
        assertEquals(3, look(301).bathWarmerKelvin());
    }

    private static Acts look(OwnHands of, long second) {
        return of.next(new KitchenView(AT.plusSeconds(second), OptionalDouble.empty()))
                .acts();
    }

    private Acts look(long second) {
        return hands.next(new KitchenView(AT.plus(Duration.ofSeconds(second)), OptionalDouble.empty()))
                .acts();
    }
}
