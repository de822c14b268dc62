package fifthform.probe.link;

import java.util.OptionalLong;

/**
 * When the next line of an adapter that keeps time will begin, so that a reader can sleep until it is whole. Only every
 * second line is foretold; the one between is waited for, which sets the rhythm right again. Times are nanoseconds of one
 * monotonic clock.
 */
final class Rhythm {
    private static final long SHORTEST_NANOS = 60_000_000;
    /** As long as a read may last at most. */
    private static final long LONGEST_NANOS = 200_000_000;

    private static final long JITTER_NANOS = 4_000_000;

    private OptionalLong lastBegun = OptionalLong.empty();
    private long periodNanos;
    private boolean steady;
    private boolean foretold;

    /** A line has begun now that was waited for. */
    void begun(long nanos) {
        if (lastBegun.isPresent()) {
            long each = (nanos - lastBegun.getAsLong()) / (foretold ? 2 : 1);
            steady = each >= SHORTEST_NANOS && each <= LONGEST_NANOS && Math.abs(each - periodNanos) < JITTER_NANOS;
            periodNanos = each;
        }
        lastBegun = OptionalLong.of(nanos);
        foretold = false;
    }

    /** When the next line begins; empty where it has to be waited for. */
    OptionalLong next() {
        return steady && !foretold ? OptionalLong.of(lastBegun.getAsLong() + periodNanos) : OptionalLong.empty();
    }

    /** It was there as foretold. */
    void came() {
        foretold = true;
    }

    void silence() {
        steady = false;
    }
}
