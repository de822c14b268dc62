package fifthform.simulator.rivals;

import fifthform.curves.engine.Event;
import fifthform.simulator.bench.Moment;
import java.util.List;

/** Follows a batch from moment to moment for one kind of figure. */
interface Watch {
    /** Half a second passed, and this was said in it. */
    void saw(Moment before, Moment after, List<Event> events);
}
