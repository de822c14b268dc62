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
    void whoIsSureMovesTheBowl() {
        assertEquals(Place.TABLE, new PlaceOdds(0.05, 0.93, 0.02).with(SEEN, Place.BATH));
        assertEquals(Place.BATH, new PlaceOdds(0.13, 0.85, 0.02).with(SEEN, Place.BATH), "not sure enough");
        assertEquals(Place.BATH, new PlaceOdds(0.05, 0.93, 0.02).with(TOLD, Place.BATH), "a key takes more");
        assertEquals(Place.TABLE, new PlaceOdds(0.01, 0.98, 0.01).with(TOLD, Place.BATH));
    }

    @Test
    void whoIsFairlySureThatItStaysKeepsTheRulesFromMovingIt() {
        assertEquals(Place.BATH, new PlaceOdds(0.8, 0.2, 0).with(SEEN, Place.TABLE));
        assertEquals(Place.TABLE, new PlaceOdds(0.7, 0.3, 0).with(SEEN, Place.TABLE));
    }

    @Test
    void logitsBecomeOdds() {
        PlaceOdds odds = PlaceOdds.ofLogits(StrictMath.log(6), StrictMath.log(3), 0);
        assertEquals(0.6, odds.bath(), 1e-12);
        assertEquals(0.3, odds.table(), 1e-12);
        assertEquals(0.1, odds.coldWater(), 1e-12);
    }
}
