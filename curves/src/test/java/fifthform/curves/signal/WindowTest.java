package fifthform.curves.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.signal.Window.Point;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a window answers, held against the same questions asked of every point. */
class WindowTest {
    private static final Instant START = Instant.parse("2026-01-10T10:00:00Z");

    /** A point each 1.5 s for five minutes: of each rate there are several, of each temperature too. */
    private static Window wavy() {
        Window window = Window.EMPTY;
        for (int i = 0; i < 200; i++) window = window.with(point(i));
        return window;
    }

    private static Point point(int i) {
        return new Point(START.plusMillis(1500L * i), 31 + i * 7 % 11 / 10.0, (i * 5 % 13 - 6) / 4.0);
    }

    @Test
    void itKeepsTwoMinutes() {
        Window window = wavy();
        assertEquals(81, window.points().size());
        assertEquals(point(119), window.points().get(0));
        assertEquals(point(199), window.points().get(80));
        assertEquals(window, window.with(new Point(point(199).at().plusMillis(999), 0, 0)));
    }

    @Test
    void extremesAreThoseOfThePointsSinceThen() {
        Window window = wavy();
        for (int back = 0; back <= 80; back++) {
            Instant from = point(199 - back).at();
            var since =
                    window.points().stream().filter(p -> !p.at().isBefore(from)).toList();
            assertEquals(since.stream().mapToDouble(Point::kelvinPerMinute).min(), window.lowestRateThroughout(from));
            assertEquals(since.stream().mapToDouble(Point::kelvinPerMinute).max(), window.highestRateThroughout(from));
            assertEquals(since.stream().mapToDouble(Point::celsius).min(), window.coolestThroughout(from));
            assertEquals(since.stream().mapToDouble(Point::celsius).max(), window.warmestThroughout(from));
            assertEquals(Optional.of(since.get(0)), window.firstSince(from));
            assertEquals(OptionalDouble.of(since.get(0).celsius()), window.celsiusAt(from.plusMillis(700)));
        }
    }

    @Test
    void ofSeveralFastestTheLatestCounts() {
        Window window = wavy();
        Instant from = window.points().get(0).at();
        assertEquals(Optional.of(point(187)), window.fastestRiseSince(from));
        assertEquals(Optional.of(point(195)), window.fastestFallSince(from));
    }

    @Test
    void whatLiesBeforeOrAfterItIsEmpty() {
        Window window = wavy();
        Instant before = window.points().get(0).at().minusMillis(1);
        Instant after = point(199).at().plusMillis(1);
        assertEquals(OptionalDouble.empty(), window.lowestRateThroughout(before));
        assertEquals(OptionalDouble.empty(), window.celsiusAt(before));
        assertEquals(OptionalDouble.empty(), window.lowestRateThroughout(after));
        assertEquals(OptionalDouble.empty(), window.highestRateThroughout(after));
        assertEquals(Optional.empty(), window.fastestRiseSince(after));
        assertEquals(Optional.empty(), window.firstSince(after));
        assertEquals(OptionalDouble.of(point(199).celsius()), window.celsiusAt(after));
    }
}
