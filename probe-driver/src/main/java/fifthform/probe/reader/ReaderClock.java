package fifthform.probe.reader;

import java.time.Duration;
import java.time.InstantSource;

/** The session's time, and waiting in it: practice at thirty times the speed of life waits a thirtieth. */
public interface ReaderClock extends InstantSource {
    /** Waits for {@code duration} of this clock's time. */
    void pause(Duration duration) throws InterruptedException;
}
