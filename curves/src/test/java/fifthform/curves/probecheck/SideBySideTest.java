package fifthform.curves.probecheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.probecheck.CheckInput.Reading;
import fifthform.curves.setup.Correction;
import java.time.Instant;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Two probes in one pot. */
class SideBySideTest {
    private static final Correction GOOD = new Correction(1, 0, 0.2);
    private static final Correction SHIFTED = new Correction(1, 0.7, 0.2);

    @Test
    void sayTheSameWithinWhatCanBeMeasured() {
        Agreement agreement = after(40, s -> 32, s -> 32.05).orElseThrow();
        assertEquals(-0.05, agreement.differenceKelvin(), 0.02);
        assertTrue(agreement.holds());
        assertTrue(agreement.isAsCloseAsMeasured());
    }

    @Test
    void aDifferenceWithinTheirDoubtIsNoQuarrel() {
        Agreement agreement = after(40, s -> 32, s -> 32.45).orElseThrow();
        assertTrue(agreement.holds());
        assertFalse(agreement.isAsCloseAsMeasured());
    }

    @Test
    void disagreeBeyondTheirDoubt() {
        assertFalse(after(40, s -> 32, s -> 33).orElseThrow().holds());
    }

    @Test
    void eachIsCorrectedByItsOwnCheck() {
        SideBySide pot = pot(40, s -> 32, s -> 31.3);
        assertEquals(0, pot.agreement(GOOD, SHIFTED).orElseThrow().differenceKelvin(), 0.02);
    }

    @Test
    void nothingIsSaidBeforeBothAreSteady() {
        assertEquals(Optional.empty(), after(20, s -> 32, s -> 32));
        assertEquals(Optional.empty(), after(40, s -> 32, s -> 32 + s / 20));
    }

    private static Optional<Agreement> after(int seconds, DoubleUnaryOperator one, DoubleUnaryOperator other) {
        return pot(seconds, one, other).agreement(GOOD, GOOD);
    }

    private static SideBySide pot(int seconds, DoubleUnaryOperator one, DoubleUnaryOperator other) {
        SplittableRandom random = new SplittableRandom(1);
        SideBySide pot = SideBySide.START;
        Instant start = Instant.parse("2026-01-01T09:00:00Z");
        for (int i = 0; i < 4 * seconds; i++) {
            Instant at = start.plusMillis(250L * i);
            pot = pot.withOne(new Reading(at, one.applyAsDouble(i / 4.0) + random.nextDouble(-0.05, 0.05), 0.01))
                    .withOther(new Reading(at, other.applyAsDouble(i / 4.0) + random.nextDouble(-0.05, 0.05), 0.01));
        }
        return pot;
    }
}
