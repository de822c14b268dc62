package fifthform.probe.link;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class RhythmTest {
    private static final long MILLI = 1_000_000;

    private final Rhythm rhythm = new Rhythm();

    @Test
    void everySecondLineIsForetoldOnceTheRhythmIsKnown() {
        begun(0);
        begun(100);
        assertEquals(OptionalLong.empty(), rhythm.next(), "one interval is no rhythm");
        begun(201);
        assertEquals(OptionalLong.of(302 * MILLI), rhythm.next());
        rhythm.came();
        assertEquals(OptionalLong.empty(), rhythm.next(), "the next one is waited for");
        begun(403);
        assertEquals(OptionalLong.of(504 * MILLI), rhythm.next(), "two lines later, half of that each");
    }

    @Test
    void whatHesitatesOrIsSlowOrFallsSilentIsWaitedFor() {
        for (int i = 0; i < 5; i++) begun(i * 1000);
        assertEquals(OptionalLong.empty(), rhythm.next(), "too slow to sleep through");
        begun(4100);
        begun(4200);
        begun(4310);
        assertEquals(OptionalLong.empty(), rhythm.next(), "it hesitated");
        begun(4420);
        rhythm.silence();
        assertEquals(OptionalLong.empty(), rhythm.next());
    }

    private void begun(long millis) {
        rhythm.begun(millis * MILLI);
    }
}
