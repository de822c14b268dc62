package fifthform.monitor.model;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * How far back the curve is looked at, while everything else stays at now. Comes back by itself, since a curve of the past
 * that nobody watches is a curve nobody is warned by.
 *
 * @param by how long before now the curve ends; zero: at now
 * @param until when it comes back, on the clock of hands
 */
public record LookBack(Duration by, Instant until) {
    /** The curve as it comes. */
    public static final LookBack NOW = new LookBack(Duration.ZERO, Instant.MIN);

    /** Half of what the curve shows, so that something known stays in sight. Our own choice. */
    static final Duration STEP = Duration.ofMinutes(5);

    /** Without a key for so long it is over. */
    static final Duration PATIENCE = Duration.ofSeconds(20);

    public LookBack {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(until, "until");
    }

    /** Whether it shows what was. */
    public boolean isBack() {
        return !by.isZero();
    }

    /** A step further back, but not before the batch began, {@code elapsed} ago. */
    public LookBack earlier(Duration elapsed, Instant hands) {
        Duration wanted = by.plus(STEP);
        return wanted.compareTo(elapsed) < 0 ? new LookBack(wanted, hands.plus(PATIENCE)) : touched(hands);
    }

    /** A step towards now. */
    public LookBack later(Instant hands) {
        return by.compareTo(STEP) > 0 ? new LookBack(by.minus(STEP), hands.plus(PATIENCE)) : NOW;
    }

    /** Any key shows that somebody is there. */
    public LookBack touched(Instant hands) {
        return isBack() ? new LookBack(by, hands.plus(PATIENCE)) : NOW;
    }

    /** What is left of it at this moment of the clock of hands. */
    public LookBack at(Instant hands) {
        return hands.isBefore(until) ? this : NOW;
    }
}
