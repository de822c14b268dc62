package fifthform.curves.engine;

import java.util.List;
import java.util.Objects;

/** What one input led to. */
public record Step(State after, List<Event> events) {
    public Step {
        Objects.requireNonNull(after, "after");
        events = List.copyOf(events);
    }
}
