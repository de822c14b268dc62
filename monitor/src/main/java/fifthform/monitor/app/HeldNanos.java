package fifthform.monitor.app;

import java.util.OptionalLong;
import java.util.function.LongSupplier;

/**
 * Monotonic nanoseconds that may be held until the session is ready: at sixty times life, the second in which this computer
 * loads the program would be a minute without a reading.
 */
final class HeldNanos implements LongSupplier {
    private volatile OptionalLong releasedAt;

    private HeldNanos(OptionalLong releasedAt) {
        this.releasedAt = releasedAt;
    }

    /** Nanoseconds that stand still until {@link #release()}. */
    static HeldNanos held() {
        return new HeldNanos(OptionalLong.empty());
    }

    /** Nanoseconds that pass from now on. */
    static HeldNanos running() {
        return new HeldNanos(OptionalLong.of(System.nanoTime()));
    }

    /** Lets them pass; without effect where they do. */
    void release() {
        if (releasedAt.isEmpty()) releasedAt = OptionalLong.of(System.nanoTime());
    }

    @Override
    public long getAsLong() {
        OptionalLong since = releasedAt;
        return since.isPresent() ? System.nanoTime() - since.getAsLong() : 0;
    }
}
