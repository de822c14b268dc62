package fifthform.monitor.app;

import fifthform.monitor.model.ScreenFeed;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;

/** Where a session can be shown. */
@FunctionalInterface
interface Showing {
    /** Blocks until the session is over. */
    void show(Optional<ScreenChoice> wished, ScreenFeed feed, Supplier<Duration> elapsed) throws InterruptedException;
}
