package fifthform.monitor.session;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.engine.Event;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The curve up to one moment; never changes. */
public final class TraceView {
    private final long[] epochMillis;
    private final double[] celsius;
    private final int size;
    private final List<Flag> flags;
    private final List<Gap> gaps;
    private final List<SeedTurn> seed;
    private final List<Event.SeedLost> losses;

    /** Something that happened, as a word for people. */
    public record Flag(Instant at, String word) {}

    /** A time without readings. */
    public record Gap(Instant from, Instant to) {}

    /**
     * From here on this was said of the crystals, until the next one.
     *
     * @param word empty where nothing is said any more: it is melted again
     * @param thick whether it was likely to have thickened
     */
    public record SeedTurn(Instant from, Optional<SeedWord> word, boolean thick) {}

    /** Takes a point. */
    public interface PointTaker {
        void point(Instant at, double celsius);
    }

    TraceView(
            long[] epochMillis,
            double[] celsius,
            int size,
            List<Flag> flags,
            List<Gap> gaps,
            List<SeedTurn> seed,
            List<Event.SeedLost> losses) {
        this.epochMillis = epochMillis;
        this.celsius = celsius;
        this.size = size;
        this.flags = flags;
        this.gaps = gaps;
        this.seed = seed;
        this.losses = losses;
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

    /** What was said of the crystals, one entry a change, oldest first; empty before the cool step. */
    public List<SeedTurn> seed() {
        return seed;
    }

    /** The moments at which heat cost the temper its seed, oldest first. */
    public List<Event.SeedLost> losses() {
        return losses;
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
