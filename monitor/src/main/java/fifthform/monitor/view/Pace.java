package fifthform.monitor.view;

/** Lets something happen at most once in a while: the figures ten times a second, the charts twice. */
final class Pace {
    private final long gapNanos;
    private boolean begun;
    private long lastNanos;

    Pace(long gapNanos) {
        this.gapNanos = gapNanos;
    }

    /** Whether it is time again at {@code nowNanos}; a yes starts the next wait. */
    boolean due(long nowNanos) {
        if (begun && nowNanos - lastNanos < gapNanos) return false;
        begun = true;
        lastNanos = nowNanos;
        return true;
    }
}
