package fifthform.monitor.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fifthform.curves.input.Recorded;
import fifthform.curves.input.Tick;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class TapeInputsTest {
    private static final Instant START = Instant.parse("2026-02-03T14:15:16Z");

    private final List<Recorded> tape = IntStream.rangeClosed(1, 100)
            .mapToObj(i -> new Recorded(i, new Tick(START.plusSeconds(i))))
            .toList();

    @Test
    void handsOnEverythingAsItStands() throws Exception {
        assertEquals(tape, all(new TapeInputs(tape, START, Optional.empty(), Optional.empty())));
    }

    @Test
    void takesNothingAfterTheEndThatWasAskedFor() throws Exception {
        TapeInputs part = new TapeInputs(tape, START, Optional.of(START.plusSeconds(10)), Optional.empty());
        assertEquals(tape.subList(0, 10), all(part));
    }

    @Test
    void stopsWhenAsked() throws Exception {
        TapeInputs part = new TapeInputs(tape, START, Optional.empty(), Optional.empty());
        part.next();
        part.stop();
        assertEquals(Optional.empty(), part.next());
    }

    @Test
    void pacedNothingComesBeforeItsTimeAndWhatIsSkippedComesAtOnce() throws Exception {
        SessionClock clock = new SessionClock(START, 1000, System::nanoTime);
        TapeInputs paced = new TapeInputs(tape, START.plusSeconds(50), Optional.empty(), Optional.of(clock));
        for (Recorded expected : tape) {
            assertEquals(expected, paced.next().orElseThrow());
            if (expected.sequence() >= 50)
                assertFalse(clock.instant().isBefore(expected.input().at()), expected.toString());
        }
        assertEquals(Optional.empty(), paced.next());
    }

    @Test
    void aStopIsHeardWhileItWaits() throws Exception {
        SessionClock clock = new SessionClock(START, 0.1, System::nanoTime);
        TapeInputs paced = new TapeInputs(tape, START, Optional.empty(), Optional.of(clock));
        paced.next();
        Thread stopper = new Thread(paced::stop);
        stopper.start();
        assertEquals(Optional.empty(), paced.next());
        stopper.join();
    }

    private static List<Recorded> all(TapeInputs source) throws InterruptedException {
        List<Recorded> all = new ArrayList<>();
        for (Optional<Recorded> next = source.next(); next.isPresent(); next = source.next()) all.add(next.get());
        return all;
    }
}
