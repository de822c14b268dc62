package fifthform.curves.forecast;

import fifthform.curves.check.Require;
import fifthform.curves.signal.Window;
import fifthform.curves.signal.Window.Point;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The straight line through the last seconds in the water, read off at the lift. Over one moment a bout of stirring or
 * a coarse last digit moves the rate by a fifth; over 20 s they even out, and water hardly weakens in that time. Of 8,
 * 12, 20 and 30 s this one predicted the coast of other batches best (simulated home kitchens).
 *
 * @param celsius the line at the lift, °C
 * @param kelvinPerSecond its slope, K/s
 */
record Stretch(double celsius, double kelvinPerSecond) {
    private static final Duration LENGTH = Duration.ofSeconds(20);

    /** Fewer points make no line. */
    private static final int FEWEST_POINTS = 8;

    Stretch {
        Require.finite(celsius, "celsius");
        Require.finite(kelvinPerSecond, "kelvinPerSecond");
    }

    /** Least squares through the points of the last seconds before {@code lift}. */
    static Optional<Stretch> to(Instant lift, Window window) {
        Instant from = lift.minus(LENGTH);
        List<Point> points = window.points().stream()
                .filter(p -> !p.at().isBefore(from) && !p.at().isAfter(lift))
                .toList();
        if (points.size() < FEWEST_POINTS) return Optional.empty();
        double meanSeconds = 0;
        double meanCelsius = 0;
        for (Point p : points) {
            meanSeconds += seconds(lift, p) / points.size();
            meanCelsius += p.celsius() / points.size();
        }
        double together = 0;
        double squares = 0;
        for (Point p : points) {
            double away = seconds(lift, p) - meanSeconds;
            together += away * (p.celsius() - meanCelsius);
            squares += away * away;
        }
        if (squares <= 0) return Optional.empty();
        double slope = together / squares;
        return Optional.of(new Stretch(meanCelsius - slope * meanSeconds, slope));
    }

    private static double seconds(Instant lift, Point point) {
        return Duration.between(lift, point.at()).toMillis() / 1000.0;
    }
}
