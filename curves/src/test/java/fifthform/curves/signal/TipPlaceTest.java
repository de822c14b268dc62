package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.signal.Water.Known;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pulled out, at the wall, and what only looks like it. */
class TipPlaceTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final double ROOM = 22;

    private TipPlace tip = TipPlace.IN_CHOCOLATE;
    private long milliseconds;
    private double reads;
    private Optional<Water> water = Optional.empty();

    /** From where, τ in air, readings a second: noticed before three quarters of the way are over. */
    @ParameterizedTest
    @CsvSource({"45, 20, 2", "45, 8, 10", "31.5, 8, 2", "31.5, 5, 1", "50, 30, 4"})
    void aTipPulledOutIsNoticedAndStaysDoubtedInTheAir(double celsius, double tau, int rate) {
        rests(celsius, 30, rate);
        follows(ROOM, tau, 1.4 * tau, rate);
        doubts(Doubt.OUT_OF_CHOCOLATE);
        follows(ROOM, tau, 300, rate);
        doubts(Doubt.OUT_OF_CHOCOLATE);
        follows(celsius - 0.5, 4, 20, rate);
        assertEquals(Optional.empty(), tip.doubt(), "dipped in again");
    }

    @ParameterizedTest
    @CsvSource({"BATH, 30, 46, 35, 1.5", "COLD_WATER, 32, 14, 26, 1.5"})
    void aTipAtTheWallIsNoticedAndBelievedWhenItComesAway(
            Place place, double celsius, double bath, double wall, double tau) {
        water = Optional.of(new Water(place, START, bath, Known.SEEN));
        rests(celsius, 30, 4);
        follows(wall, tau, 6, 4);
        doubts(Doubt.AT_WALL);
        follows(wall, tau, 10, 4);
        doubts(Doubt.AT_WALL);
        follows(celsius + 0.3, 4, 15, 4);
        assertEquals(Optional.empty(), tip.doubt());
    }

    /** Hot chocolate poured in also steps; nothing comes back, and a minute after it is believed. */
    @Test
    void aStepThatStaysIsBelievedAfterAMinute() {
        water = Optional.of(new Water(Place.BATH, START, 46, Known.TOLD));
        rests(30, 30, 4);
        follows(34, 2, 10, 4);
        doubts(Doubt.AT_WALL);
        follows(34, 2, 65, 4);
        assertEquals(Optional.empty(), tip.doubt());
    }

    /** The quickest honest bowls: 200 g into an ice bath, a thin bowl on a hot one; a coarse adapter; two false readings in a row now and then. */
    @ParameterizedTest
    @CsvSource({
        "COLD_WATER, 45, 2, -15, 0.01",
        "COLD_WATER, 33, 2, -15, 0.25",
        "BATH, 27, 60, 12, 0.25",
        "BATH, 27, 60, 12, 1",
        "COLD_WATER, 45, 5, -12, 1"
    })
    void aQuickBowlIsNotDoubted(Place place, double celsius, double bath, double kelvinPerMinute, double step) {
        water = Optional.of(new Water(place, START, bath, Known.SEEN));
        rests(celsius, 30, 2);
        for (int i = 0; i < 60; i++) {
            double now = celsius + kelvinPerMinute * i / 120;
            read(step * Math.round(now / step) + (i % 20 < 2 ? 25 : 0), 2, step);
            assertEquals(Optional.empty(), tip.doubt(), "reading " + i);
        }
    }

    @Test
    void aDipIsNoDoubt() {
        water = Optional.of(new Water(Place.BATH, START, 46, Known.TOLD));
        rests(ROOM, 30, 4);
        follows(31, 3, 30, 4);
        assertEquals(Optional.empty(), tip.doubt());
    }

    private void rests(double celsius, int seconds, int rate) {
        reads = celsius;
        for (int i = 0; i < seconds * rate; i++) read(celsius, rate, 0.01);
    }

    private void follows(double celsius, double tau, double seconds, int rate) {
        for (int i = 0; i < seconds * rate; i++) {
            reads = celsius + (reads - celsius) * StrictMath.exp(-1.0 / rate / tau);
            read(Math.round(100 * reads) / 100.0, rate, 0.01);
        }
    }

    private void read(double celsius, int rate, double step) {
        milliseconds += 1000 / rate;
        tip = tip.with(START.plusMillis(milliseconds), celsius, step, new Surroundings(ROOM, water, Optional.empty()));
    }

    private void doubts(Doubt doubt) {
        assertEquals(Optional.of(doubt), tip.doubt(), "at " + reads);
    }
}
