package fifthform.curves.contrast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.learning.BarLook;
import fifthform.curves.learning.BarLook.Sureness;
import fifthform.curves.learning.Bloom;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bars count once, however often they were looked at. */
class BarsTest {
    private static BarLook look(double hours, Bloom bloom, Sureness sureness) {
        return new BarLook(
                hours,
                List.of(bloom),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                sureness);
    }

    private static BarLook look(double hours, Bloom bloom) {
        return look(hours, bloom, Sureness.SURE);
    }

    @Test
    void theLatestLookCounts() {
        assertEquals(Optional.of(Bars.FINE), Bars.of(List.of(look(24, Bloom.NONE))));
        assertEquals(Optional.of(Bars.MARKED), Bars.of(List.of(look(168, Bloom.STREAKS), look(24, Bloom.NONE))));
    }

    @Test
    void looksThatContradictEachOtherCountForNothing() {
        assertEquals(Optional.empty(), Bars.of(List.of(look(24, Bloom.VEIL), look(168, Bloom.NONE))));
        assertEquals(Optional.empty(), Bars.of(List.of(look(24, Bloom.NONE), look(24, Bloom.VEIL))));
    }

    @Test
    void tooYoungTooOldUnsureOrOfAnotherCauseIsNoLook() {
        assertEquals(Optional.empty(), Bars.of(List.of()));
        assertEquals(Optional.empty(), Bars.of(List.of(look(23.9, Bloom.NONE))));
        assertEquals(Optional.empty(), Bars.of(List.of(look(24 * 36, Bloom.VEIL))));
        assertEquals(Optional.empty(), Bars.of(List.of(look(48, Bloom.VEIL, Sureness.UNSURE))));
        assertEquals(Optional.empty(), Bars.of(List.of(look(48, Bloom.SUGAR))));
        assertEquals(Optional.of(Bars.FINE), Bars.of(List.of(look(24, Bloom.NONE), look(24 * 60, Bloom.VEIL))));
    }
}
