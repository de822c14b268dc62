package fifthform.monitor.replay;

import java.util.Arrays;

/**
 * The readings of one probe, all of them, in the order of time: 16 bytes each. Times are ns since the session's start.
 * Never changes once it is handed out.
 */
public final class Readings {
    private static final long NANOS = 1_000_000_000L;

    /** Closer readings belong to one line; a slow adapter's are as far apart as five of its intervals. */
    private static final long SHORTEST_GAP_NANOS = 5 * NANOS;

    private static final int INTERVALS = 5;

    private long[] nanos = new long[4096];
    private double[] celsius = new double[4096];
    private int size;
    private long gapNanos = SHORTEST_GAP_NANOS;

    Readings() {}

    /** A point of a curve to be drawn; NaN where the curve is interrupted. */
    public record Curve(double[] seconds, double[] celsius) {}

    void add(long atNanos, double pointCelsius) {
        if (size == nanos.length) {
            nanos = Arrays.copyOf(nanos, 2 * size);
            celsius = Arrays.copyOf(celsius, 2 * size);
        }
        // Two threads put things into the queue; what comes a little late counts as of the moment it came.
        nanos[size] = size == 0 ? atNanos : Math.max(atNanos, nanos[size - 1]);
        celsius[size] = pointCelsius;
        size++;
    }

    /** No more is added. */
    void close() {
        int some = Math.min(size, 2000);
        long[] apart = new long[Math.max(0, some - 1)];
        for (int i = 1; i < some; i++) apart[i - 1] = nanos[i] - nanos[i - 1];
        Arrays.sort(apart);
        if (apart.length > 0) gapNanos = Math.max(SHORTEST_GAP_NANOS, INTERVALS * apart[apart.length / 2]);
    }

    public int size() {
        return size;
    }

    public long nanos(int i) {
        return nanos[i];
    }

    public double celsius(int i) {
        return celsius[i];
    }

    /** The first reading at or after this time; {@link #size} where there is none. */
    public int firstAt(long atNanos) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (nanos[middle] < atNanos) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    /** The last reading at or before this time; -1 where there is none. */
    public int lastAt(long atNanos) {
        return firstAt(atNanos + 1) - 1;
    }

    /** Whether no reading came for so long before this one that no line is drawn to it. */
    public boolean isAfterGap(int i) {
        return i > 0 && nanos[i] - nanos[i - 1] > gapNanos;
    }

    /** How long no reading may come before that is a gap, ns. */
    public long gapNanos() {
        return gapNanos;
    }

    /** Lowest and highest reading of a span, °C; NaN where it has none. */
    public double[] range(long fromNanos, long toNanos) {
        double low = Double.NaN;
        double high = Double.NaN;
        for (int i = firstAt(fromNanos); i < size && nanos[i] <= toNanos; i++) {
            if (!(celsius[i] >= low)) low = celsius[i];
            if (!(celsius[i] <= high)) high = celsius[i];
        }
        return new double[] {low, high};
    }

    /** Two such ranges as one; NaN where neither has any. */
    static double[] joined(double[] one, double[] other) {
        // Math.min of a NaN is NaN; here the other one counts then.
        double low = Double.isNaN(one[0]) || other[0] < one[0] ? other[0] : one[0];
        double high = Double.isNaN(one[1]) || other[1] > one[1] ? other[1] : one[1];
        return new double[] {low, high};
    }

    /** Where the lowest reading of a span is; -1 where it has none. */
    public int lowest(long fromNanos, long toNanos) {
        int lowest = -1;
        for (int i = firstAt(fromNanos); i < size && nanos[i] <= toNanos; i++)
            if (lowest < 0 || celsius[i] < celsius[lowest]) lowest = i;
        return lowest;
    }

    /**
     * The curve of a span for a screen that is so many pixels wide: of each column of pixels the first, the lowest, the
     * highest and the last reading in the order in which they came, so that nothing that can be seen is lost. One reading
     * beyond either end lets the line run out of the picture.
     */
    public Curve curve(long fromNanos, long toNanos, int columns) {
        int begin = Math.max(0, firstAt(fromNanos) - 1);
        int end = Math.min(size, firstAt(toNanos + 1) + 1);
        CurveMaker made = new CurveMaker(Math.min(end - begin, 4 * columns + 8));
        double nanosAColumn = Math.max(1, (toNanos - fromNanos) / (double) columns);
        int i = begin;
        while (i < end) {
            long column = (long) Math.floor((nanos[i] - fromNanos) / nanosAColumn);
            long before = fromNanos + (long) Math.ceil((column + 1) * nanosAColumn);
            int first = i;
            int low = i;
            int high = i;
            i++;
            while (i < end && nanos[i] < before && nanos[i] - nanos[i - 1] <= gapNanos) {
                if (celsius[i] < celsius[low]) low = i;
                if (celsius[i] > celsius[high]) high = i;
                i++;
            }
            if (isAfterGap(first) && first > begin) made.interrupt();
            made.add(first);
            if (low != high) {
                made.add(Math.min(low, high));
                made.add(Math.max(low, high));
            }
            made.add(i - 1);
        }
        return made.curve();
    }

    /** Gathers points, none of them twice in a row. */
    private final class CurveMaker {
        private double[] x;
        private double[] y;
        private int points;
        private int last = -1;

        CurveMaker(int room) {
            x = new double[room];
            y = new double[room];
        }

        void add(int i) {
            if (i == last) return;
            last = i;
            put(nanos[i] / (double) NANOS, celsius[i]);
        }

        void interrupt() {
            put(Double.NaN, Double.NaN);
        }

        private void put(double seconds, double pointCelsius) {
            if (points == x.length) {
                x = Arrays.copyOf(x, 2 * points + 8);
                y = Arrays.copyOf(y, 2 * points + 8);
            }
            x[points] = seconds;
            y[points] = pointCelsius;
            points++;
        }

        Curve curve() {
            return new Curve(Arrays.copyOf(x, points), Arrays.copyOf(y, points));
        }
    }
}
