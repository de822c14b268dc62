package fifthform.probe.reader;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A clock that only pauses move: a test of hours takes milliseconds. */
final class HandMovedClock implements ReaderClock {
    private Instant now;
    private final List<Duration> pauses = Collections.synchronizedList(new ArrayList<>());

    HandMovedClock(Instant start) {
        this.now = start;
    }

    @Override
    public synchronized Instant instant() {
        return now;
    }

    @Override
    public void pause(Duration duration) throws InterruptedException {
        if (Thread.interrupted()) throw new InterruptedException();
        pauses.add(duration);
        advance(duration);
    }

    synchronized void advance(Duration duration) {
        now = now.plus(duration);
    }

    List<Duration> pauses() {
        return List.copyOf(pauses);
    }
}
