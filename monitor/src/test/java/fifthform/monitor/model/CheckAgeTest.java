package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the screen says of the last check. */
class CheckAgeTest {
    private static final Instant NOW = Instant.parse("2026-06-01T09:00:00Z");
    /** The longest words that {@code NothingCutOffTest} holds to fit under the number. */
    private static final int LONGEST = Moments.LONGEST_DOUBT.length();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0|', checked today'",
                "1|', checked a day ago'",
                "12|', checked 12 days ago'",
                "100|', checked 3 months ago'",
                "180|', checked 6 months ago'",
                "181|': check again, last check 6 months ago'",
                "243|': check again, last check 8 months ago'"
            })
    void saysHowLongAgo(long days, String words) {
        String said = CheckAge.words(Origin.REAL, checked(days), NOW);
        assertEquals(words, said);
        assertTrue(("within ±10.4 °F" + said).length() <= LONGEST, said);
    }

    @Test
    void simulatedProbesHaveNoAge() {
        assertEquals("", CheckAge.words(Origin.SIMULATED, checked(300), NOW));
        assertEquals("", CheckAge.words(Origin.SIMULATED, Correction.UNCHECKED, NOW), "nobody can check it");
    }

    @Test
    void whatIsNotKnownIsNotSaid() {
        assertEquals(": probe not checked", CheckAge.words(Origin.REAL, Correction.UNCHECKED, NOW));
        assertEquals("", CheckAge.words(Origin.REAL, new Correction(1, 0.3, 0.2), NOW));
        assertEquals("", CheckAge.words(Origin.REAL, checked(-3), NOW), "a clock that was set back");
    }

    private static Correction checked(long daysAgo) {
        return new Correction(1, -0.3, 0.2, Optional.of(NOW.minus(Duration.ofDays(daysAgo))));
    }
}
