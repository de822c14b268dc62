package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.intake.SessionClock;
import fifthform.monitor.practice.PracticePace.AtCues;
import fifthform.probe.link.Arrival;
import fifthform.probe.link.ByteLink;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** However long this computer needs to begin, in the pretend kitchen nothing has been missed. */
class PracticeStartTest {
    private static final Instant START = Instant.parse("2026-02-03T14:15:16Z");

    private final AtomicLong nanos = new AtomicLong();
    private final SessionClock clock = new SessionClock(START, 60, nanos::get);

    @Test
    void theFirstReadingIsNotMissed() throws Exception {
        Scenario scenario = Scenarios.builtIn().find("broken-wire").fold(s -> s, problems -> {
            throw new AssertionError(problems);
        });
        Wiring wiring = new PracticeProbe(scenario, 60, AtCues.GO_ON).wire(clock, input -> {});
        nanos.addAndGet(Duration.ofSeconds(2).toNanos());
        assertEquals(START.plusSeconds(120), clock.instant());
        try (ByteLink bowl = wiring.lines().get(0).source().open()) {
            Arrival arrival = bowl.read().orElseThrow();
            while (arrival.isSilence()) arrival = bowl.read().orElseThrow();
            assertTrue(arrival.at().isBefore(START.plusSeconds(2)), arrival::toString);
        }
    }

    @Test
    void theClockStandsUntilTheSessionIsReady() throws Exception {
        HeldNanos held = HeldNanos.held();
        long before = held.getAsLong();
        Thread.sleep(5);
        assertEquals(before, held.getAsLong());
        held.release();
        Thread.sleep(5);
        assertTrue(held.getAsLong() >= before + 5_000_000, () -> "stands still");
    }
}
