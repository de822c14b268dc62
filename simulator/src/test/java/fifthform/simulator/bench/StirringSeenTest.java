package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bowl.Spot;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Stirring as the readings show it, in batches of the home fleet that nobody tuned it on ({@code -Dstirred=N} for more). */
class StirringSeenTest {
    private static final int BATCHES = Integer.getInteger("stirred", 24);

    @Test
    void whatIsSaidOfTheSpoonIsRightInFourMinutesOfFive() {
        Fleet home = Fleet.builtIn(Fleet.HOME).withSeed(62);
        StirringSeen all = StirringSeen.in(home, 0, BATCHES, Optional.empty());
        System.out.println("stirring, home fleet: " + all.words());
        if (BATCHES > 24) {
            for (Spot spot : new Spot[] {Spot.COLD_WATER, Spot.TABLE, Spot.WARM_BATH}) {
                System.out.println("  " + spot + ": "
                        + StirringSeen.in(home, 0, BATCHES, Optional.of(spot)).words());
            }
        }
        assertTrue(all.rightFraction() >= 0.8, all.words());
        assertTrue(all.minutes() > 100, all.words());
    }
}
