package fifthform.curves.signal;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Recent points of a curve, at most one a second and none older than two minutes, oldest first. Small enough to be
 * copied at every reading.
 */
public record Window(List<Point> points) {
    private static final Duration SPACING = Duration.ofSeconds(1);
    private static final Duration LENGTH = Duration.ofMinutes(2);

    /** A window without points. */
    public static final Window EMPTY = new Window(List.of());

    /**
     * A point of the curve.
     *
     * @param at when
     * @param celsius temperature, °C
     * @param kelvinPerMinute its rate, K/min
     */
    public record Point(Instant at, double celsius, double kelvinPerMinute) {
        public Point {
            Objects.requireNonNull(at, "at");
            Require.finite(celsius, "celsius");
            Require.finite(kelvinPerMinute, "kelvinPerMinute");
        }
    }

    public Window {
        points = List.copyOf(points);
    }

    /** The window with a further point, unless the last one is less than a second old. */
    public Window with(Point point) {
        if (!points.isEmpty() && point.at().isBefore(last().at().plus(SPACING))) return this;
        List<Point> kept = new ArrayList<>(points.size() + 1);
        Instant oldest = point.at().minus(LENGTH);
        for (Point p : points) if (!p.at().isBefore(oldest)) kept.add(p);
        kept.add(point);
        return new Window(kept);
    }

    /** The point since {@code from} with the highest rate. */
    public Optional<Point> fastestRiseSince(Instant from) {
        Point best = null;
        for (Point p : points) {
            if (!p.at().isBefore(from) && (best == null || p.kelvinPerMinute() >= best.kelvinPerMinute())) best = p;
        }
        return Optional.ofNullable(best);
    }

    /** The point since {@code from} with the lowest rate. */
    public Optional<Point> fastestFallSince(Instant from) {
        Point best = null;
        for (Point p : points) {
            if (!p.at().isBefore(from) && (best == null || p.kelvinPerMinute() <= best.kelvinPerMinute())) best = p;
        }
        return Optional.ofNullable(best);
    }

    /**
     * The latest point since {@code from} whose rate is still at least nine tenths of the fastest rise (or, where
     * {@code fastest} falls, of the fastest fall): about when whatever drove it let go.
     */
    public Point lastDriven(Point fastest, Instant from) {
        Point last = fastest;
        for (Point p : points) {
            boolean driven = p.kelvinPerMinute() / fastest.kelvinPerMinute() >= 0.9;
            if (!p.at().isBefore(from) && driven) last = p;
        }
        return last;
    }

    /** The lowest rate since {@code from}, K/min; empty where the window does not reach back that far. */
    public OptionalDouble lowestRateThroughout(Instant from) {
        if (!reachesBackTo(from)) return OptionalDouble.empty();
        return points.stream()
                .filter(p -> !p.at().isBefore(from))
                .mapToDouble(Point::kelvinPerMinute)
                .min();
    }

    /** The highest rate since {@code from}, K/min; empty where the window does not reach back that far. */
    public OptionalDouble highestRateThroughout(Instant from) {
        if (!reachesBackTo(from)) return OptionalDouble.empty();
        return points.stream()
                .filter(p -> !p.at().isBefore(from))
                .mapToDouble(Point::kelvinPerMinute)
                .max();
    }

    /** The lowest temperature since {@code from}, °C; empty where the window does not reach back that far. */
    public OptionalDouble coolestThroughout(Instant from) {
        if (!reachesBackTo(from)) return OptionalDouble.empty();
        return points.stream()
                .filter(p -> !p.at().isBefore(from))
                .mapToDouble(Point::celsius)
                .min();
    }

    /** The highest temperature since {@code from}, °C; empty where the window does not reach back that far. */
    public OptionalDouble warmestThroughout(Instant from) {
        if (!reachesBackTo(from)) return OptionalDouble.empty();
        return points.stream()
                .filter(p -> !p.at().isBefore(from))
                .mapToDouble(Point::celsius)
                .max();
    }

    /** The temperature at {@code from} or just before, °C; empty where the window does not reach back that far. */
    public OptionalDouble celsiusAt(Instant from) {
        OptionalDouble found = OptionalDouble.empty();
        for (Point p : points) {
            if (p.at().isAfter(from)) break;
            found = OptionalDouble.of(p.celsius());
        }
        return found;
    }

    private boolean reachesBackTo(Instant from) {
        return !points.isEmpty() && !points.get(0).at().isAfter(from);
    }

    private Point last() {
        return points.get(points.size() - 1);
    }
}
