package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.signal.Water.Known;
import java.time.Instant;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may repeat itself and what may not. */
class RepeatsTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    private Repeats repeats = Repeats.NONE;
    private long milliseconds;

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 1.0})
    void aCoarseAdapterAtRestRepeatsHonestly(double step) {
        for (double celsius = 31; celsius > 28; celsius -= step) reads(celsius, 40, 500);
        reads(28, 10_000, 500);
        assertFalse(repeats.isStuck(Optional.empty()));
        assertFalse(repeats.isDead());
    }

    /** 15 K away from the water even the slowest bowl has moved by three steps of 0.25 K after 46 s, of 1 K after 201 s. */
    @ParameterizedTest
    @CsvSource({"0.25, 46", "1.0, 201"})
    void inWaterThatTheMakerNamedTheSameNumberIsDoubtedOnceItShouldHaveMoved(double step, int seconds) {
        reads(30 - step, 5, 1000);
        reads(30, 1, 1000);
        Water bath = new Water(Place.BATH, at(), 45, Known.TOLD);
        reads(30, seconds - 1, 1000);
        assertFalse(repeats.isStuck(Optional.of(bath)), "after " + (seconds - 1) + " s");
        reads(30, 2, 1000);
        assertTrue(repeats.isStuck(Optional.of(bath)));
        assertFalse(repeats.isStuck(Optional.empty()), "on the table nobody knows");
        reads(30 + step, 1, 1000);
        assertFalse(repeats.isStuck(Optional.of(bath)), "it moves again");
    }

    @Test
    void waterAsWarmAsTheChocolateMovesNothing() {
        Water bath = new Water(Place.BATH, START, 32, Known.TOLD);
        reads(31.75, 1, 500);
        reads(31.5, 2000, 500);
        assertFalse(repeats.isStuck(Optional.of(bath)));
    }

    @Test
    void aFineAdapterThatScatteredAndStopsIsDoubtedAfterAMinute() {
        SplittableRandom noise = new SplittableRandom(1);
        for (int i = 0; i < 600; i++) reads(Math.round(20 * (31 + 0.06 * (noise.nextDouble() * 2 - 1))) / 20.0, 1, 500);
        reads(31.3, 119, 500);
        assertFalse(repeats.isStuck(Optional.empty()));
        reads(31.3, 3, 500);
        assertTrue(repeats.isStuck(Optional.empty()));
        reads(31.35, 1, 500);
        assertFalse(repeats.isStuck(Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -160.0 / 9})
    void zerosFromTheBeginningAreDead(double zero) {
        reads(zero, 4, 1000);
        assertFalse(repeats.isDead());
        reads(zero, 1, 1000);
        assertTrue(repeats.isDead());
        reads(24, 1, 1000);
        assertFalse(repeats.isDead());
    }

    @Test
    void zerosThatDropFromChocolateAreDead() {
        reads(31, 60, 500);
        reads(0, 10, 500);
        assertTrue(repeats.isDead());
    }

    @Test
    void zerosAfterAPauseAreDead() {
        reads(31, 60, 500);
        milliseconds += 30_000;
        reads(0, 10, 500);
        assertTrue(repeats.isDead());
    }

    /** A tip with τ 0.3, 2 and 6 s put into ice water, on adapters down to 1 K and 1 reading/s: its way down is seen. */
    @ParameterizedTest
    @CsvSource({"0.3, 1.0, 1000", "0.5, 0.25, 1000", "2, 0.25, 500", "6, 0.1, 1000", "2, 1.0, 5000"})
    void anIcePointHasAWayDown(double tau, double step, int period) {
        reads(24, 20, period);
        for (double t = 0.4; t < 120; t += period / 1000.0) {
            reads(step * Math.round(24 * StrictMath.exp(-t / tau) / step) + 0.0, 1, period);
            assertFalse(repeats.isDead(), "after " + t + " s");
        }
    }

    private void reads(double celsius, int times, int period) {
        for (int i = 0; i < times; i++) {
            milliseconds += period;
            repeats = repeats.with(at(), celsius);
        }
    }

    private Instant at() {
        return START.plusMillis(milliseconds);
    }
}
