package fifthform.monitor.view;

/** Lets something happen at most once in a while, and sooner where there is news: the figures, the charts. */
final class Pace {
    private final long gapNanos;
    private final long newsGapNanos;
    private boolean begun;
    private long lastNanos;

    Pace(long gapNanos) {
        this(gapNanos, gapNanos);
    }

    /** Where news wait for {@code newsGapNanos} at most since the last time. */
    Pace(long gapNanos, long newsGapNanos) {
        this.gapNanos = gapNanos;
        this.newsGapNanos = newsGapNanos;
    }

    /** Whether it is time again at {@code nowNanos}; a yes starts the next wait. */
    boolean due(long nowNanos) {
        return due(nowNanos, false);
    }

    /** The same, where there may be something new. */
    boolean due(long nowNanos, boolean news) {
        if (begun && nowNanos - lastNanos < (news ? newsGapNanos : gapNanos)) return false;
        begun = true;
        lastNanos = nowNanos;
        return true;
    }
}
