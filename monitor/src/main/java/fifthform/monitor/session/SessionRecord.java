package fifthform.monitor.session;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Recorded;
import java.time.Instant;

/** Where a session is recorded. Every method returns at once. */
public interface SessionRecord {
    /** A record that keeps nothing, for watching a recording again. */
    SessionRecord NONE = new SessionRecord() {
        @Override
        public void input(Recorded recorded) {}

        @Override
        public void event(long sequence, Event event) {}

        @Override
        public void note(Instant at, String about, String text) {}

        @Override
        public void force() {}
    };

    /** An input, before the engine takes it. */
    void input(Recorded recorded);

    /** What the maker was told because of input {@code sequence}. */
    void event(long sequence, Event event);

    /** A remark of the program. */
    void note(Instant at, String about, String text);

    /** To the disk now. */
    void force();
}
