package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.signal.Water.Known;
import java.time.Instant;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A curve that bends as no bowl of chocolate can, and what only looks like it. */
class KinkTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final Surroundings OVER_BATH =
            new Surroundings(22, Optional.of(new Water(Place.BATH, START, 45, Known.TOLD)), Optional.empty());

    private final SplittableRandom noise = new SplittableRandom(4);
    private Kink kink = Kink.NONE;
    private long milliseconds;

    private void reads(double celsius) {
        milliseconds += 500;
        double rounded = Math.round(10 * (celsius + 0.05 * (2 * noise.nextDouble() - 1))) / 10.0;
        kink = kink.with(START.plusMillis(milliseconds), rounded, 0.1, OVER_BATH);
    }

    private void warms(double from, int seconds) {
        for (int i = 0; i < 2 * seconds; i++) reads(from + i * 0.5 * 2.0 / 60);
        assertEquals(Optional.empty(), kink.doubt());
    }

    /** From where a tip feels the wall or the air: by how many kelvin, τ, and within how many seconds it is noticed. */
    @ParameterizedTest
    @CsvSource({"3, 4, 2", "-9, 48, 3.5", "4, 2, 1.5"})
    void aTipThatSlipsIsDoubtedWithinSecondsUntilItIsBack(double by, double tau, double within) {
        warms(28, 60);
        double seconds = 0;
        double off = 0;
        while (kink.doubt().isEmpty() && seconds < 20) {
            seconds += 0.5;
            off = by * (1 - Math.exp(-seconds / tau));
            reads(30 + off);
        }
        assertTrue(seconds <= within, "noticed after " + seconds + " s");
        for (int i = 0; i < 16; i++) reads(30 + off + i * 0.05 * by / tau);
        assertEquals(Optional.of(Doubt.JUMPS), kink.doubt(), "it stays there");
        for (int i = 0; i < 40; i++) reads(30.3);
        assertEquals(Optional.empty(), kink.doubt());
    }

    @Test
    void aSpikeIsNoBend() {
        warms(28, 60);
        for (int i = 0; i < 60; i++) {
            reads(i % 30 == 0 ? 55 : 30 + i * 0.5 * 2.0 / 60);
            assertEquals(Optional.empty(), kink.doubt(), "after " + i);
        }
    }

    /** Put into the bath: the rate grows from 0 to 4 K/min within ten seconds, through the wall. */
    @Test
    void aBowlPutIntoTheBathDoesNotBendSo() {
        for (int i = 0; i < 120; i++) reads(28);
        double celsius = 28;
        for (int i = 0; i < 120; i++) {
            celsius += 0.5 * 4.0 / 60 * Math.min(1, i / 20.0);
            reads(celsius);
            assertEquals(Optional.empty(), kink.doubt(), "after " + i);
        }
    }

    @Test
    void whileItMeltsEverythingMayJump() {
        Surroundings melting = new Surroundings(22, Optional.empty(), Optional.empty(), Surroundings.Chocolate.MELTING);
        for (int i = 0; i < 100; i++) {
            kink = kink.with(START.plusMillis(500L * i), i < 50 ? 30 : 35, 0.1, melting);
            assertEquals(Optional.empty(), kink.doubt());
        }
    }
}
