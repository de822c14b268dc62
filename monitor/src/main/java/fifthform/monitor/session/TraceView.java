package fifthform.monitor.session;

import java.time.Instant;
import java.util.List;

/** The curve up to one moment; never changes. */
public final class TraceView {
    private final long[] epochMillis;
    private final double[] celsius;
    private final int size;
    private final List<Flag> flags;
    private final List<Gap> gaps;

    /** Something that happened, as a word for people. */
    public record Flag(Instant at, String word) {}

    /** A time without readings. */
    public record Gap(Instant from, Instant to) {}

    /** Takes a point. */
    public interface PointTaker {
        void point(Instant at, double celsius);
    }

    TraceView(long[] epochMillis, double[] celsius, int size, List<Flag> flags, List<Gap> gaps) {
        this.epochMillis = epochMillis;
        this.celsius = celsius;
        this.size = size;
        this.flags = flags;
        this.gaps = gaps;
    }

    /** Hands over the points since {@code from}, oldest first. */
    public void since(Instant from, PointTaker taker) {
        for (int i = firstAt(from.toEpochMilli()); i < size; i++) {
            taker.point(Instant.ofEpochMilli(epochMillis[i]), celsius[i]);
        }
    }

    public int size() {
        return size;
    }

    public List<Flag> flags() {
        return flags;
    }

    public List<Gap> gaps() {
        return gaps;
    }

    private int firstAt(long millis) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (epochMillis[middle] < millis) low = middle + 1;
            else high = middle;
        }
        return low;
    }
}
