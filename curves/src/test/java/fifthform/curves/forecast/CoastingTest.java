package fifthform.curves.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.bowlcheck.BowlWatch;
import fifthform.curves.setup.LearnedCoast;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CoastingTest {
    private static Coasting knowing(Coast coast) {
        return new Coasting(coast, Optional.empty(), Optional.empty(), 1, BowlWatch.BEGINNING);
    }

    @Test
    void aGuessFromTheMaterialIsNoLegacy() {
        assertEquals(Optional.empty(), knowing(new Coast(Math.log(36), 0.45, 0)).learned());
    }

    @Test
    void whatTheLiftsTaughtIsLeftToTheNextBatch() {
        Coast known = new Coast(Math.log(36), 0.45, 0).learned(50, 0.2);

        LearnedCoast left = knowing(known).learned().orElseThrow();

        assertEquals(known.seconds(), left.coastSeconds());
        assertEquals(known.logSpread(), left.logSpread());
        assertEquals(1, left.liftsSeen());
    }
}
