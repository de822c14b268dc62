package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Times in words. */
class SpansTest {
    @Test
    void aWholeHourHasNoMinutes() {
        assertEquals("1 h", Spans.words(Duration.ofMinutes(60)));
        assertEquals("1 h 5 min", Spans.words(Duration.ofMinutes(65)));
        assertEquals("2 h", Spans.minutes(Duration.ofMinutes(120)));
        assertEquals("59 min", Spans.minutes(Duration.ofMinutes(59)));
    }
}
