package fifthform.curves.signal;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Watches for the moment at which a cold tip is dipped into melted chocolate, and measures its lag from how it takes up
 * the temperature. Armed when a session starts and when a probe is put back; a lag once measured stays until the next
 * dip that can be read.
 *
 * @param armedAt since when it waits for a dip
 * @param watch what it is doing
 * @param points the readings it may need: the last seconds while it waits, all of the dip while it records
 * @param lag what the last good dip showed
 */
public record Dip(Instant armedAt, Watch watch, List<Point> points, Optional<Lag> lag) {
    /** What the watch is doing. */
    public enum Watch {
        /** The probe has just been put back: nothing is believed until it stands still or is seen to rise. */
        PUT_BACK,
        /** Waiting for a dip. */
        WAITING,
        /** The tip is rising. */
        RISING,
        /** No dip is expected. */
        IDLE
    }

    /** A reading. */
    record Point(Instant at, double celsius) {}

    /** A first dip comes within this time of the start, or the tip was in the bowl from the beginning. Own choice. */
    private static final double WAITS_SECONDS = 600;

    private static final double BEFORE_SECONDS = 5;
    private static final double RISE_KELVIN = 1.5;

    /** More than four time constants of the slowest tip that is measured. */
    private static final double LONGEST_RISE_SECONDS = 80;

    private static final double SHORTEST_RISE_SECONDS = 3;

    /** Within the last third of the time not more than this share of the rise: four time constants are over. */
    private static final double STEADY_SHARE = 0.04;

    /** A probe put back counts as settled when it stands still for so long, and after this long in any case. */
    private static final double STILL_SECONDS = 3;

    private static final double STILL_KELVIN = 0.5;
    private static final double LONGEST_SETTLING_SECONDS = 60;

    /** Ten readings a second for a minute; a faster adapter's are thinned. */
    private static final double SPACING_SECONDS = 0.09;

    private static final int MOST_POINTS = 900;

    public Dip {
        Objects.requireNonNull(armedAt, "armedAt");
        Objects.requireNonNull(watch, "watch");
        points = List.copyOf(points);
        Require.within(points.size(), 0, MOST_POINTS, "points");
        Objects.requireNonNull(lag, "lag");
    }

    /** Waiting for the first dip of a session. */
    public static Dip waitingSince(Instant at) {
        return new Dip(at, Watch.WAITING, List.of(), Optional.empty());
    }

    /** Waiting again, since the probe was put back. */
    Dip putBack(Instant at) {
        return new Dip(at, Watch.PUT_BACK, List.of(), lag);
    }

    /** Whether readings are still on their way to what they measure. */
    boolean settling() {
        return watch == Watch.PUT_BACK || watch == Watch.RISING;
    }

    Dip with(Instant at, double celsius, double stepKelvin) {
        return switch (watch) {
            case IDLE -> this;
            case WAITING, PUT_BACK -> waited(with(new Point(at, celsius)).since(at), at, celsius, stepKelvin);
            case RISING -> rising(with(new Point(at, celsius)), at, celsius, stepKelvin);
        };
    }

    private Dip waited(Dip next, Instant at, double celsius, double stepKelvin) {
        int lowest = next.lowest();
        if (celsius - next.points.get(lowest).celsius() >= RISE_KELVIN + stepKelvin) {
            return next.doing(Watch.RISING, next.points.subList(lowest, next.points.size()));
        }
        double waited = Track.seconds(armedAt, at);
        if (waited > WAITS_SECONDS) return next.doing(Watch.IDLE, List.of());
        boolean settled = watch == Watch.PUT_BACK
                && (waited >= LONGEST_SETTLING_SECONDS || next.standsStill(at, STILL_KELVIN + stepKelvin));
        return settled ? next.doing(Watch.WAITING, next.points) : next;
    }

    private Dip rising(Dip next, Instant at, double celsius, double stepKelvin) {
        Point first = next.points.get(0);
        double passed = Track.seconds(first.at(), at);
        double rise = celsius - first.celsius();
        double highest = next.points.stream().mapToDouble(Point::celsius).max().orElse(celsius);
        boolean fellBack = highest - celsius > 0.3 * (highest - first.celsius()) + stepKelvin;
        if (fellBack || next.points.size() == MOST_POINTS) return next.doing(Watch.WAITING, List.of());
        double late = rise - (next.celsiusAt(2 * passed / 3) - first.celsius());
        boolean steady = passed >= SHORTEST_RISE_SECONDS && Math.abs(late) <= STEADY_SHARE * rise + 0.5 * stepKelvin;
        if (!steady && passed < LONGEST_RISE_SECONDS) return next;
        Optional<Lag> read = LagFit.of(next.points, stepKelvin);
        return read.isPresent() ? new Dip(armedAt, Watch.IDLE, List.of(), read) : next.doing(Watch.WAITING, List.of());
    }

    private Dip doing(Watch other, List<Point> kept) {
        return new Dip(armedAt, other, kept, lag);
    }

    private Dip with(Point point) {
        boolean close =
                !points.isEmpty() && Track.seconds(points.get(points.size() - 1).at(), point.at()) < SPACING_SECONDS;
        if (close) return this;
        List<Point> more = new ArrayList<>(points.size() + 1);
        more.addAll(points);
        more.add(point);
        return doing(watch, more);
    }

    /** Without what is older than some seconds; the newest two always stay, for an adapter that is slow. */
    private Dip since(Instant at) {
        int from = 0;
        while (from < points.size() - 2 && Track.seconds(points.get(from).at(), at) > BEFORE_SECONDS) from++;
        return from == 0 ? this : doing(watch, points.subList(from, points.size()));
    }

    private boolean standsStill(Instant at, double withinKelvin) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (Point p : points) {
            if (Track.seconds(p.at(), at) > STILL_SECONDS) continue;
            low = Math.min(low, p.celsius());
            high = Math.max(high, p.celsius());
        }
        return points.size() >= 3
                && high - low <= withinKelvin
                && Track.seconds(points.get(0).at(), at) >= STILL_SECONDS;
    }

    private int lowest() {
        int lowest = 0;
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).celsius() <= points.get(lowest).celsius()) lowest = i;
        }
        return lowest;
    }

    /** The reading nearest after so many seconds of the dip. */
    private double celsiusAt(double seconds) {
        for (Point p : points) if (Track.seconds(points.get(0).at(), p.at()) >= seconds) return p.celsius();
        return points.get(points.size() - 1).celsius();
    }
}
