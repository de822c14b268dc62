package fifthform.simulator.alarms;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;

/** Warnings of melt-out while the chocolate came nowhere near it, neither a minute before nor three minutes after. */
final class FalseWarnings {
    private static final Duration BEFORE = Duration.ofMinutes(1);
    private static final Duration AFTER = Duration.ofMinutes(3);

    private final double warnCelsius;
    private final Deque<Warning> open = new ArrayDeque<>();
    private Instant lastWarm = Instant.MIN;
    private long all;
    private long inWork;

    FalseWarnings(double warnCelsius) {
        this.warnCelsius = warnCelsius;
    }

    /** When the batch was so far. */
    enum When {
        IN_WORK,
        EARLIER
    }

    private record Warning(Instant at, When when) {}

    void raised(Instant at, When when) {
        if (Duration.between(lastWarm, at).compareTo(BEFORE) > 0) open.add(new Warning(at, when));
    }

    /** One that no later warmth can justify. */
    void plainlyFalse() {
        all++;
    }

    void saw(Instant at, double shownCelsius) {
        if (shownCelsius >= warnCelsius) {
            lastWarm = at;
            open.clear();
        }
        while (!open.isEmpty() && open.peek().at().plus(AFTER).isBefore(at)) count(open.poll());
    }

    void ended() {
        open.forEach(this::count);
        open.clear();
    }

    private void count(Warning warning) {
        all++;
        if (warning.when() == When.IN_WORK) inWork++;
    }

    long all() {
        return all;
    }

    long inWork() {
        return inWork;
    }
}
