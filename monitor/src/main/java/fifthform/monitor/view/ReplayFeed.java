package fifthform.monitor.view;

import fifthform.monitor.replay.ReplayDesk;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * What the Replay window is given.
 *
 * @param desk the batch laid out
 * @param others sessions that can be laid beside it, newest first; asked when the list is opened
 */
public record ReplayFeed(ReplayDesk desk, Supplier<List<Path>> others) {
    public ReplayFeed {
        Objects.requireNonNull(desk, "desk");
        Objects.requireNonNull(others, "others");
    }
}
