package fifthform.monitor.session;

import fifthform.curves.engine.Event;

/** Hears what the maker is told; called on the session's thread and must return at once. */
public interface SessionListener {
    void told(Event event);
}
