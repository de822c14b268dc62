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
        Instant oldest = point.at().minus(LENGTH);
        int first = 0;
        while (first < points.size() && points.get(first).at().isBefore(oldest)) first++;
        List<Point> kept = new ArrayList<>(points.size() - first + 1);
        kept.addAll(points.subList(first, points.size()));
        kept.add(point);
        return new Window(kept);
    }

    /** The point since {@code from} with the highest rate. */
    public Optional<Point> fastestRiseSince(Instant from) {
        Point best = null;
        for (int i = points.size() - 1; i >= 0 && !points.get(i).at().isBefore(from); i--) {
            Point p = points.get(i);
            if (best == null || p.kelvinPerMinute() > best.kelvinPerMinute()) best = p;
        }
        return Optional.ofNullable(best);
    }

    /** The point since {@code from} with the lowest rate. */
    public Optional<Point> fastestFallSince(Instant from) {
        Point best = null;
        for (int i = points.size() - 1; i >= 0 && !points.get(i).at().isBefore(from); i--) {
            Point p = points.get(i);
            if (best == null || p.kelvinPerMinute() < best.kelvinPerMinute()) best = p;
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
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = points.size() - 1; i >= 0 && !points.get(i).at().isBefore(from); i--) {
            lowest = Math.min(lowest, points.get(i).kelvinPerMinute());
        }
        return Double.isInfinite(lowest) ? OptionalDouble.empty() : OptionalDouble.of(lowest);
    }

    /** The highest rate since {@code from}, K/min; empty where the window does not reach back that far. */
    public OptionalDouble highestRateThroughout(Instant from) {
        if (!reachesBackTo(from)) return OptionalDouble.empty();
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = points.size() - 1; i >= 0 && !points.get(i).at().isBefore(from); i--) {
            highest = Math.max(highest, points.get(i).kelvinPerMinute());
        }
        return Double.isInfinite(highest) ? OptionalDouble.empty() : OptionalDouble.of(highest);
    }

    /** The lowest temperature since {@code from}, °C; empty where the window does not reach back that far. */
    public OptionalDouble coolestThroughout(Instant from) {
        if (!reachesBackTo(from)) return OptionalDouble.empty();
        double coolest = Double.POSITIVE_INFINITY;
        for (int i = points.size() - 1; i >= 0 && !points.get(i).at().isBefore(from); i--) {
            coolest = Math.min(coolest, points.get(i).celsius());
        }
        return Double.isInfinite(coolest) ? OptionalDouble.empty() : OptionalDouble.of(coolest);
    }

    /** The highest temperature since {@code from}, °C; empty where the window does not reach back that far. */
    public OptionalDouble warmestThroughout(Instant from) {
        if (!reachesBackTo(from)) return OptionalDouble.empty();
        double warmest = Double.NEGATIVE_INFINITY;
        for (int i = points.size() - 1; i >= 0 && !points.get(i).at().isBefore(from); i--) {
            warmest = Math.max(warmest, points.get(i).celsius());
        }
        return Double.isInfinite(warmest) ? OptionalDouble.empty() : OptionalDouble.of(warmest);
    }

    /** The temperature at {@code from} or just before, °C; empty where the window does not reach back that far. */
    public OptionalDouble celsiusAt(Instant from) {
        for (int i = points.size() - 1; i >= 0; i--) {
            if (!points.get(i).at().isAfter(from))
                return OptionalDouble.of(points.get(i).celsius());
        }
        return OptionalDouble.empty();
    }

    /** The oldest point that is no older than {@code from}. */
    public Optional<Point> firstSince(Instant from) {
        Point first = null;
        for (int i = points.size() - 1; i >= 0 && !points.get(i).at().isBefore(from); i--) first = points.get(i);
        return Optional.ofNullable(first);
    }

    private boolean reachesBackTo(Instant from) {
        return !points.isEmpty() && !points.get(0).at().isAfter(from);
    }

    private Point last() {
        return points.get(points.size() - 1);
    }
}
