package fifthform.monitor.replay;

import fifthform.curves.engine.Event;
import fifthform.curves.input.Recorded;
import fifthform.monitor.session.SessionSnapshot;
import fifthform.monitor.texts.ReplayText;
import java.util.List;

/**
 * What went wrong in a batch, first thing first. One object for one batch: it sees each step while the batch is gone
 * through behind the scenes, and answers once that is done. Called on one background thread only.
 */
public interface Findings {
    /**
     * The engine took an input. Steps come in order, each once; the state before is that of the call before.
     *
     * @param input what happened
     * @param now all that is known after it
     * @param events what it led to
     */
    default void follow(Recorded input, SessionSnapshot now, List<Event> events) {}

    /** What the first of them is, beside the headline. */
    default String about() {
        return ReplayText.HEADLINE_FIRST.say();
    }

    /**
     * What is to be said of the batch, the first thing that went wrong first; never empty, for a batch in which nothing
     * did is worth a word too.
     */
    List<Finding> found(Recording recording, SessionSnapshot last);
}
