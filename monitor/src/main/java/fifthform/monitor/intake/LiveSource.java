package fifthform.monitor.intake;

import fifthform.curves.input.Input;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Tick;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Inputs as they happen: whatever readers, keys and the journal hand in, in order of arrival, and a tick where nothing
 * comes for a quarter of a second. Numbers them.
 */
public final class LiveSource implements InputSource {
    /** Where the time between inputs comes from. */
    public enum Ticking {
        /** From the session's clock: when nothing has come for a while, that is news. */
        BY_THE_CLOCK,
        /** From the inputs' own times: for practice and recorded bytes, where a wait of this computer means nothing. */
        BY_THE_DATA
    }

    private final BlockingQueue<Input> queue = new LinkedBlockingQueue<>();
    private final AtomicInteger sources;
    private final SessionClock clock;
    private final Ticking ticking;
    private final Deque<Input> ready = new ArrayDeque<>();
    private long taken;
    private volatile Instant last;
    private volatile boolean stopped;

    /**
     * A source.
     *
     * @param clock the session's clock
     * @param taken how many inputs the session has already taken; 0 for a new one
     * @param sources how many readers must have ended before the source ends by itself
     */
    public LiveSource(SessionClock clock, Ticking ticking, long taken, int sources) {
        this.clock = Objects.requireNonNull(clock, "clock");
        this.ticking = Objects.requireNonNull(ticking, "ticking");
        this.taken = taken;
        this.sources = new AtomicInteger(sources);
        this.last = clock.instant();
    }

    /** Hands in what happened; any thread. */
    public void put(Input input) {
        queue.add(input);
    }

    /**
     * The session's time for what this computer has to tell of itself. By the data it is the time of what was taken last:
     * the clock may be seconds ahead of bytes that wait for a busy computer, and would make silence of them.
     */
    public Instant instant() {
        return ticking == Ticking.BY_THE_DATA ? last : clock.instant();
    }

    /** One reader's recording has ended. */
    public void sourceEnded() {
        sources.decrementAndGet();
    }

    /** The maker wants to stop: what has been handed in is still taken, then the source ends. */
    public void stop() {
        stopped = true;
    }

    @Override
    public Optional<Recorded> next() throws InterruptedException {
        while (true) {
            if (!ready.isEmpty()) return Optional.of(numbered(ready.remove()));
            Input input = queue.poll(patienceNanos(), TimeUnit.NANOSECONDS);
            if (input != null) {
                if (ticking == Ticking.BY_THE_DATA) ticksUntil(input.at());
                ready.add(input);
                continue;
            }
            if (queue.isEmpty() && (stopped || sources.get() <= 0)) return Optional.empty();
            Instant now = clock.instant();
            boolean due = ticking == Ticking.BY_THE_CLOCK && !now.isBefore(last.plus(Ticks.EVERY));
            if (due) return Optional.of(numbered(new Tick(now)));
        }
    }

    private void ticksUntil(Instant until) {
        for (Instant at = last.plus(Ticks.EVERY); at.isBefore(until); at = at.plus(Ticks.EVERY))
            ready.add(new Tick(at));
    }

    private long patienceNanos() {
        if (ticking == Ticking.BY_THE_DATA) return 50_000_000L;
        Duration left = Duration.between(clock.instant(), last.plus(Ticks.EVERY));
        double real = Math.max(0, left.toNanos()) / clock.speed();
        return Math.min(50_000_000L, Math.round(real) + 100_000);
    }

    private Recorded numbered(Input input) {
        if (input.at().isAfter(last)) last = input.at();
        return new Recorded(++taken, input);
    }
}
