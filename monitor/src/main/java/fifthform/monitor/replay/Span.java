package fifthform.monitor.replay;

/**
 * The part of the batch that is on the screen, ns since the session's start.
 *
 * @param from its beginning
 * @param to its end, after the beginning
 */
public record Span(long from, long to) {
    /** Closer than this nothing more is to be seen. */
    static final long SHORTEST = 20_000_000_000L;

    public Span {
        if (to <= from) throw new IllegalArgumentException("the span must end after it begins");
    }

    static Span whole(long endNanos) {
        return new Span(0, Math.max(SHORTEST, endNanos));
    }

    public long length() {
        return to - from;
    }

    boolean holds(long nanos) {
        return nanos >= from && nanos <= to;
    }

    /** As far in or out, this moment staying where it is on the screen, never beyond the batch. */
    Span zoomed(double factor, long around, long endNanos) {
        Span all = whole(endNanos);
        long length = Math.max(SHORTEST, Math.min(all.length(), Math.round(length() * factor)));
        double share = Math.max(0, Math.min(1, (around - from) / (double) length()));
        return within(around - Math.round(share * length), length, all);
    }

    /** Moved as little as is needed to hold this moment; then with a little room ahead of it. */
    Span holding(long nanos, long endNanos) {
        if (holds(nanos)) return this;
        Span all = whole(endNanos);
        long before = nanos < from ? length() / 5 : 4 * length() / 5;
        return within(nanos - before, length(), all);
    }

    private static Span within(long from, long length, Span all) {
        long begin = Math.max(all.from(), Math.min(all.to() - length, from));
        return new Span(begin, begin + length);
    }
}
