package fifthform.monitor.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SessionClockTest {
    private static final Instant START = Instant.parse("2026-02-03T14:15:16.123456Z");

    private final AtomicLong nanos = new AtomicLong(-5_000_000_000L);

    @Test
    void goesOnFromTheWallClockByMonotonicTime() {
        SessionClock clock = new SessionClock(START, 1, nanos::get);
        assertEquals(START, clock.instant());
        nanos.addAndGet(1_500_000_000L);
        assertEquals(START.plusMillis(1500), clock.instant());
        nanos.addAndGet(999);
        assertEquals(START.plusMillis(1500), clock.instant(), "to the microsecond, as it is stored");
    }

    @Test
    void aChangeOfSpeedMakesNoJump() {
        SessionClock clock = new SessionClock(START, 30, nanos::get);
        nanos.addAndGet(1_000_000_000L);
        clock.runAt(3);
        assertEquals(START.plusSeconds(30), clock.instant());
        assertEquals(3, clock.speed());
        nanos.addAndGet(1_000_000_000L);
        assertEquals(START.plusSeconds(33), clock.instant());
    }

    @Test
    void canBeSet() {
        SessionClock clock = new SessionClock(START, 2, nanos::get);
        nanos.addAndGet(1_000_000_000L);
        clock.set(START);
        nanos.addAndGet(1_000_000_000L);
        assertEquals(START.plusSeconds(2), clock.instant());
    }

    @Test
    void waitsInItsOwnTime() {
        SessionClock clock = new SessionClock(START, 1000, System::nanoTime);
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> clock.pause(Duration.ofSeconds(60)));
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> clock.waitUntil(START));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 0.09, 1001, Double.NaN})
    void refusesSpeedsThatNobodyMeans(double speed) {
        SessionClock clock = new SessionClock(START, 1, nanos::get);
        assertThrows(IllegalArgumentException.class, () -> clock.runAt(speed));
        assertThrows(IllegalArgumentException.class, () -> new SessionClock(START, speed, nanos::get));
        assertEquals(1, clock.speed());
    }
}
