package fifthform.monitor.session;

import fifthform.curves.engine.Event;
import java.util.List;

/** Follows a session step by step; called on the session's thread and must return at once. */
public interface SessionListener {
    /** The session took an input; {@code events} are what the maker is told because of it, often none. */
    void stepped(SessionSnapshot snapshot, List<Event> events);
}
