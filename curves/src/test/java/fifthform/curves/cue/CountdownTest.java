package fifthform.curves.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is shown of the seconds left. */
class CountdownTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    @Test
    void itNeverGrowsAndNeverRunsFasterThanTwiceTimeHoweverTheForecastWavers() {
        SplittableRandom random = new SplittableRandom(1);
        Countdown shown = new Countdown(14, START);
        for (int i = 1; i <= 60; i++) {
            Instant now = START.plusMillis(250L * i);
            Countdown next = shown.follows(Math.max(0, 14 - 0.25 * i + random.nextDouble(-6, 6)), now);
            assertTrue(next.seconds() <= shown.seconds(), "grew to " + next.seconds());
            assertTrue(shown.seconds() - next.seconds() <= 0.5 + 1e-9, "leapt to " + next.seconds());
            shown = next;
        }
        assertTrue(shown.seconds() < 1, "it ends at " + shown.seconds());
    }

    @Test
    void itWaitsWhereItHasRunAheadAndHurriesWhereItIsLate() {
        Countdown shown = new Countdown(10, START);
        assertEquals(10, shown.follows(13, START.plusSeconds(1)).seconds());
        assertEquals(8, shown.follows(3, START.plusSeconds(1)).seconds());
        assertEquals(9.4, shown.follows(9.4, START.plusSeconds(1)).seconds());
    }
}
