package fifthform.monitor.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.crystal.Spoken;
import fifthform.monitor.session.TraceView.SeedTurn;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is kept of a batch for the screens. */
class TraceLogTest {
    private static final Instant START = Instant.parse("2026-01-01T08:00:00Z");

    /** A day at 10 Hz: one entry a change of the word, not one a reading, and at most two points a second. */
    @Test
    void aDayAtTenHertzStaysSmall() {
        TraceLog log = new TraceLog();
        SeedWord[] words = SeedWord.values();
        for (int tenth = 0; tenth < 24 * 3600 * 10; tenth++) {
            Instant at = START.plusMillis(100L * tenth);
            log.add(at, 30);
            log.crystals(at, spoken(words[tenth / 100 % words.length], at));
        }
        TraceView view = log.view();
        assertEquals(24 * 360, view.seed().size());
        assertTrue(view.size() <= 24 * 3600 * 2, "points: " + view.size());
    }

    @Test
    void nothingIsKeptBeforeTheFirstWordAndAMeltEndsTheLast() {
        TraceLog log = new TraceLog();
        log.crystals(START, Spoken.NOTHING);
        assertEquals(List.of(), log.view().seed());
        Instant said = START.plus(Duration.ofMinutes(30));
        log.crystals(said, spoken(SeedWord.TOO_FEW, said));
        log.crystals(said.plusSeconds(1), spoken(SeedWord.TOO_FEW, said));
        Instant melted = said.plusSeconds(60);
        log.crystals(melted, Spoken.NOTHING);
        assertEquals(
                List.of(
                        new SeedTurn(said, Optional.of(SeedWord.TOO_FEW), false),
                        new SeedTurn(melted, Optional.empty(), false)),
                log.view().seed());
    }

    private static Spoken spoken(SeedWord word, Instant at) {
        return new Spoken(Optional.of(word), false, Optional.of(at), Optional.empty());
    }
}
