package fifthform.curves.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.input.MakerAction.Place;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** What another witness may say about where the bowl stands, beside the rules and the keys. */
class PlaceOddsTest {
    private static final Contact SEEN = new Contact(Place.BATH, Instant.EPOCH, Evidence.INFERRED);
    private static final Contact TOLD = new Contact(Place.BATH, Instant.EPOCH, Evidence.TOLD);

    @Test
    void withoutOneTheRulesDecide() {
        for (Place ruled : Place.values()) assertEquals(ruled, PlaceOdds.SILENT.with(SEEN, ruled));
    }

    @Test
    void whoIsSurerThanNotMovesTheBowlAndAKeyTakesMore() {
        assertEquals(Place.TABLE, new PlaceOdds(0.35, 0.63, 0.02).with(SEEN, Place.BATH));
        assertEquals(Place.BATH, new PlaceOdds(0.40, 0.58, 0.02).with(SEEN, Place.BATH), "not sure enough");
        assertEquals(Place.BATH, new PlaceOdds(0.03, 0.96, 0.01).with(TOLD, Place.BATH), "a key takes more");
        assertEquals(Place.TABLE, new PlaceOdds(0.01, 0.98, 0.01).with(TOLD, Place.BATH));
    }

    /** In a slow rise every rest of the spoon looks like a lift to the rules: they need a second. */
    @Test
    void whereNobodySaidAnythingTheRulesMoveTheBowlOnlyWithASecond() {
        assertEquals(Place.BATH, new PlaceOdds(0.48, 0.48, 0.04).with(SEEN, Place.TABLE));
        assertEquals(Place.TABLE, new PlaceOdds(0.44, 0.52, 0.04).with(SEEN, Place.TABLE));
        assertEquals(Place.BATH, new PlaceOdds(0.8, 0.2, 0).with(SEEN, Place.TABLE));
    }

    /** Against a key the rules speak only after the curve has contradicted it for half a minute: they need no second. */
    @Test
    void againstAKeyOnlyWhoIsFairlySureThatItStaysKeepsTheRulesFromMovingIt() {
        assertEquals(Place.BATH, new PlaceOdds(0.8, 0.2, 0).with(TOLD, Place.TABLE));
        assertEquals(Place.TABLE, new PlaceOdds(0.7, 0.3, 0).with(TOLD, Place.TABLE));
    }

    @Test
    void certainIsMoreThanLikely() {
        assertEquals(true, new PlaceOdds(0.98, 0.02, 0).isSurelyOverBath());
        assertEquals(false, new PlaceOdds(0.96, 0.04, 0).isSurelyOverBath());
        assertEquals(true, new PlaceOdds(0.52, 0.48, 0).isLikelyOverBath());
        assertEquals(false, new PlaceOdds(0.48, 0.52, 0).isLikelyOverBath());
    }

    @Test
    void logitsBecomeOdds() {
        PlaceOdds odds = PlaceOdds.ofLogits(StrictMath.log(6), StrictMath.log(3), 0);
        assertEquals(0.6, odds.bath(), 1e-12);
        assertEquals(0.3, odds.table(), 1e-12);
        assertEquals(0.1, odds.coldWater(), 1e-12);
    }
}
