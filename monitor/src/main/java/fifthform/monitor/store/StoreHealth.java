package fifthform.monitor.store;

import fifthform.curves.input.StoreTrouble.What;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Consumer;

/**
 * What is the matter with the journal just now, told once for each change: the worst of several troubles, and that it
 * writes again when the last is over.
 *
 * <p>The journal's thread finds most of it, but that thread may itself be stuck in a write; then the session's thread
 * finds that it is behind. So both come here, and telling is done under a lock: two changes told in the wrong order would
 * leave an alarm standing for ever. What is told to must only put it in a queue.
 */
final class StoreHealth {
    private final Consumer<What> told;
    /** Worst first, as the kinds of trouble are declared. */
    private final Set<What> troubles = EnumSet.noneOf(What.class);

    private What lastTold = What.WRITES_AGAIN;

    StoreHealth(Consumer<What> told) {
        this.told = told;
    }

    synchronized void begins(What trouble) {
        troubles.add(trouble);
        tell();
    }

    synchronized void ends(What trouble) {
        troubles.remove(trouble);
        tell();
    }

    private void tell() {
        What now = troubles.stream().findFirst().orElse(What.WRITES_AGAIN);
        if (now == lastTold) return;
        lastTold = now;
        told.accept(now);
    }
}
