package fifthform.monitor.app;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Recorded;
import fifthform.monitor.session.SessionRecord;
import fifthform.monitor.store.JournalWriter;
import java.time.Instant;
import java.util.Objects;

/** A session recorded in its journal. */
record JournalRecord(JournalWriter journal) implements SessionRecord {
    JournalRecord {
        Objects.requireNonNull(journal, "journal");
    }

    @Override
    public void input(Recorded recorded) {
        journal.input(recorded);
    }

    @Override
    public void event(long sequence, Event event) {
        journal.event(sequence, event);
    }

    @Override
    public void note(Instant at, String about, String text) {
        journal.note(at, about, text);
    }

    @Override
    public void force() {
        journal.force();
    }
}
