package fifthform.monitor.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.Noted;
import fifthform.curves.input.Recorded;
import fifthform.curves.input.Tick;
import fifthform.monitor.intake.LiveSource.Ticking;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class LiveSourceTest {
    private static final Instant START = Instant.parse("2026-02-03T14:15:16Z");

    private final AtomicLong nanos = new AtomicLong();
    private final SessionClock clock = new SessionClock(START, 1, nanos::get);

    @Test
    void numbersWhatComesInTheOrderOfArrival() throws Exception {
        LiveSource source = new LiveSource(clock, Ticking.BY_THE_CLOCK, 0, 1);
        source.put(note(100, "one"));
        source.put(note(50, "other"));
        assertEquals(new Recorded(1, note(100, "one")), source.next().orElseThrow());
        assertEquals(new Recorded(2, note(50, "other")), source.next().orElseThrow());
    }

    @Test
    void goesOnCountingAfterACut() throws Exception {
        LiveSource source = new LiveSource(clock, Ticking.BY_THE_CLOCK, 41, 1);
        source.put(note(0, ""));
        assertEquals(42, source.next().orElseThrow().sequence());
    }

    @Test
    void byTheClockSilenceIsTold() throws Exception {
        LiveSource source = new LiveSource(clock, Ticking.BY_THE_CLOCK, 0, 1);
        source.put(note(0, ""));
        assertEquals(note(0, ""), source.next().orElseThrow().input());
        nanos.addAndGet(250_000_000L);
        assertEquals(
                new Recorded(2, new Tick(START.plusMillis(250))), source.next().orElseThrow());
        nanos.addAndGet(400_000_000L);
        assertEquals(
                new Tick(START.plusMillis(650)), source.next().orElseThrow().input());
    }

    @Test
    void byTheDataTheTicksStandBetweenTheInputs() throws Exception {
        LiveSource source = new LiveSource(clock, Ticking.BY_THE_DATA, 0, 1);
        // A hiccup of this computer: hours pass and nobody ticks.
        nanos.addAndGet(7_200_000_000_000L);
        source.put(note(100, "a"));
        source.put(note(900, "b"));
        source.put(note(1150, "c"));
        source.sourceEnded();
        assertEquals(
                List.of(note(100, "a"), tick(350), tick(600), tick(850), note(900, "b"), note(1150, "c")), all(source));
    }

    /** Trouble with the disk is told while bytes wait for a busy computer; it must not make silence of them. */
    @Test
    void byTheDataItsTimeIsThatOfWhatWasTakenLast() throws Exception {
        LiveSource data = new LiveSource(clock, Ticking.BY_THE_DATA, 0, 1);
        LiveSource byClock = new LiveSource(clock, Ticking.BY_THE_CLOCK, 0, 1);
        nanos.addAndGet(3_000_000_000L);
        data.put(note(100, "a"));
        data.next();
        assertEquals(START.plusMillis(100), data.instant());
        assertEquals(START.plusMillis(3000), byClock.instant());
    }

    @Test
    void endsWhenEverySourceHasEnded() throws Exception {
        LiveSource source = new LiveSource(clock, Ticking.BY_THE_DATA, 0, 2);
        source.sourceEnded();
        source.put(note(0, "still"));
        assertEquals(note(0, "still"), source.next().orElseThrow().input());
        source.sourceEnded();
        assertEquals(Optional.empty(), source.next());
    }

    @Test
    void whatWasHandedInBeforeTheStopIsStillTaken() throws Exception {
        LiveSource source = new LiveSource(clock, Ticking.BY_THE_CLOCK, 0, 1);
        source.put(note(10, "a"));
        source.put(note(20, "b"));
        source.stop();
        assertEquals(List.of(note(10, "a"), note(20, "b")), all(source));
    }

    private static List<Input> all(LiveSource source) throws InterruptedException {
        List<Input> inputs = new ArrayList<>();
        for (Optional<Recorded> next = source.next(); next.isPresent(); next = source.next()) {
            assertEquals(inputs.size() + 1, next.get().sequence());
            inputs.add(next.get().input());
        }
        return inputs;
    }

    private static Noted note(long millis, String text) {
        return new Noted(START.plusMillis(millis), text);
    }

    private static Tick tick(long millis) {
        return new Tick(START.plusMillis(millis));
    }
}
