package fifthform.monitor.intake;

import fifthform.probe.reader.ReaderClock;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;

/**
 * The session's time: a wall clock read once, and monotonic nanoseconds since, so that a clock that is set during the
 * batch changes nothing. Practice and recorded bytes may let it run faster than life.
 */
public final class SessionClock implements ReaderClock {
    /** Longest single sleep, so that a change of speed is felt soon. */
    private static final Duration NAP = Duration.ofMillis(20);

    private final LongSupplier nanos;
    private final AtomicReference<Pace> pace;

    /** Since {@code nanos} it has been {@code instant}, and from there time runs {@code speed} times as fast as life. */
    private record Pace(Instant instant, long nanos, double speed) {
        Instant at(long now) {
            return instant.plusNanos(Math.round((now - nanos) * speed));
        }
    }

    /** A clock that shows {@code start} now and runs at {@code speed}, 0.1 to 1000. */
    public SessionClock(Instant start, double speed, LongSupplier nanos) {
        this.nanos = Objects.requireNonNull(nanos, "nanos");
        this.pace = new AtomicReference<>(new Pace(start, nanos.getAsLong(), checked(speed)));
    }

    /** The time now, to the microsecond. */
    @Override
    public Instant instant() {
        return pace.get().at(nanos.getAsLong()).truncatedTo(java.time.temporal.ChronoUnit.MICROS);
    }

    public double speed() {
        return pace.get().speed();
    }

    /** Sets the time, for watching a recording from its middle. */
    public void set(Instant instant) {
        pace.updateAndGet(p -> new Pace(instant, nanos.getAsLong(), p.speed()));
    }

    /** From now on time runs {@code speed} times as fast as life. */
    public void runAt(double speed) {
        checked(speed);
        pace.updateAndGet(p -> {
            long now = nanos.getAsLong();
            return new Pace(p.at(now), now, speed);
        });
    }

    @Override
    public void pause(Duration duration) throws InterruptedException {
        waitUntil(instant().plus(duration));
    }

    /** Waits until this clock shows {@code until}. */
    public void waitUntil(Instant until) throws InterruptedException {
        while (true) {
            Duration left = Duration.between(instant(), until);
            if (left.isNegative() || left.isZero()) return;
            long sleep = Math.min(NAP.toNanos(), Math.round(left.toNanos() / speed()));
            Thread.sleep(sleep / 1_000_000, (int) (sleep % 1_000_000));
        }
    }

    private static double checked(double speed) {
        if (!(speed >= 0.1 && speed <= 1000))
            throw new IllegalArgumentException("speed must be 0.1 to 1000, was " + speed);
        return speed;
    }
}
