package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.signal.Water.Known;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Swapped wires read as far below the junction as the chocolate is above it. */
class PolarityTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");
    private static final double JUNCTION = 25;

    private Polarity polarity = Polarity.UNSEEN;
    private int seconds;

    /** 45 °C cooled by 4 K a minute, or 28 °C warmed by as much, seen the wrong way round; with and without a junction. */
    @ParameterizedTest
    @CsvSource({"COLD_WATER, 45, -4, true", "BATH, 28, 4, true", "COLD_WATER, 45, -4, false", "BATH, 30, 4, false"})
    void swappedWiresAreSeenWithinAMinuteAndStayDoubtedOnTheTable(
            Place place, double celsius, double kelvinPerMinute, boolean junction) {
        Optional<Water> water = Optional.of(new Water(place, START, place == Place.BATH ? 45 : 15, Known.TOLD));
        double now = celsius;
        while (seconds < 60) {
            reads(2 * JUNCTION - now, water, junction);
            now += kelvinPerMinute / 60;
            if (seconds < 30) assertFalse(polarity.reversed().isPresent(), "after " + seconds + " s");
        }
        assertTrue(polarity.reversed().isPresent());
        reads(2 * JUNCTION - now, Optional.empty(), junction);
        assertTrue(polarity.reversed().isPresent(), "on the table");
        reads(now, Optional.empty(), junction);
        assertFalse(polarity.reversed().isPresent(), "the wires were put right");
    }

    /** The key was pressed the wrong way round: the chocolate does the opposite, but on its own side of the junction. */
    @ParameterizedTest
    @CsvSource({"BATH, 45, -6", "COLD_WATER, 27, 6"})
    void aKeyPressedTheWrongWayRoundIsNoSwap(Place place, double celsius, double kelvinPerMinute) {
        Optional<Water> water = Optional.of(new Water(place, START, place == Place.BATH ? 45 : 15, Known.TOLD));
        double now = celsius;
        while (seconds < 150 && now > 27) {
            reads(now, water, true);
            now += kelvinPerMinute / 60;
            assertEquals(Optional.empty(), polarity.reversed());
        }
    }

    private void reads(double celsius, Optional<Water> water, boolean junction) {
        seconds++;
        OptionalDouble cold = junction ? OptionalDouble.of(JUNCTION) : OptionalDouble.empty();
        Sample sample = new Sample(
                START.plusSeconds(seconds), new ProbeId("bowl"), celsius, 0.05, cold, OptionalDouble.empty());
        polarity = polarity.with(sample, new Surroundings(24, Optional.empty(), water));
    }
}
