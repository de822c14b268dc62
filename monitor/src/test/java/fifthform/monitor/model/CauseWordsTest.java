package fifthform.monitor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fifthform.curves.recipe.Phase;
import fifthform.curves.review.Cause;
import fifthform.curves.review.Cause.Kind;
import fifthform.curves.review.Cause.Said;
import fifthform.monitor.settings.Units;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Causes in words. */
class CauseWordsTest {
    private static final Instant AT = Instant.parse("2026-01-10T14:01:20Z");

    private static Cause cause(Kind kind, Said said) {
        return new Cause(
                kind,
                Phase.REWARM,
                AT,
                Optional.of(Duration.ofSeconds(80)),
                OptionalDouble.of(33.1),
                OptionalDouble.of(32),
                Optional.of(Duration.ofSeconds(18)),
                said);
    }

    private static final Said CUE = new Said.Told("lift-now", AT.minusSeconds(3));

    @Test
    void aLateLiftHasItsSecondsItsPeakAndWhatTheScreenSaid() {
        CauseWords words = new CauseWords(Units.CELSIUS, ZoneOffset.UTC);
        assertEquals(
                "14:01:20, lifted 18 s late; it went to 33.1 °C, the working range ends at 32 °C; “lift now” stood since"
                        + " 14:01:17",
                words.line(cause(Kind.LIFTED_LATE, CUE)));
        assertEquals(
                "14:01:20, lifted 18 s late; it went to 33.1 °C, the working range ends at 32 °C; the screen had not said"
                        + " it yet",
                words.line(cause(Kind.LIFTED_LATE, new Said.Nothing())));
    }

    @Test
    void temperaturesAreInTheMakersUnits() {
        CauseWords words = new CauseWords(Units.FAHRENHEIT, ZoneOffset.UTC);
        assertEquals("too warm: 91.6 °F at most, 1 min 20 s above 89.6 °F", words.what(cause(Kind.OVERSHOT, CUE)));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyKindHasWordsWithoutAHole(Kind kind) {
        String words = new CauseWords(Units.CELSIUS, ZoneOffset.UTC).line(cause(kind, CUE));
        assertFalse(words.contains("NaN"), words);
        assertFalse(words.contains("  "), words);
        assertFalse(words.endsWith("."), words);
    }
}
