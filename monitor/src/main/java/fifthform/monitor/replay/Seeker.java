package fifthform.monitor.replay;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Recorded;
import fifthform.monitor.store.JournalPass;
import java.io.IOException;
import java.util.Optional;

/**
 * The engine's state at any moment of a recording: from the minute kept before it, or from where it was asked last, step
 * by step. Not for two threads.
 */
public final class Seeker {
    private final Recording recording;
    private final SecondPass pass;
    private Optional<SecondPass.Kept> last = Optional.empty();

    public Seeker(Recording recording, SecondPass pass) {
        this.recording = recording;
        this.pass = pass;
    }

    /**
     * What the engine knows once it has taken all inputs up to this time; empty where the second pass has not come so
     * far.
     *
     * @throws IOException the file cannot be read any more
     */
    public Optional<State> at(long nanos) throws IOException {
        Optional<SecondPass.Kept> minute = pass.keptBefore(nanos);
        if (minute.isEmpty()) return Optional.empty();
        SecondPass.Kept from = last.filter(
                        l -> l.nanos() <= nanos && l.nanos() >= minute.get().nanos())
                .orElse(minute.get());
        SecondPass.Kept here = from.offset() == Long.MAX_VALUE ? from : walk(from, nanos);
        last = Optional.of(here);
        return Optional.of(here.state());
    }

    private SecondPass.Kept walk(SecondPass.Kept from, long nanos) throws IOException {
        State state = from.state();
        try (JournalPass lines = JournalPass.from(recording.file(), recording.header(), from.offset())) {
            while (lines.next()) {
                boolean input = lines.kind() == JournalPass.Kind.READING || lines.kind() == JournalPass.Kind.INPUT;
                if (!input) continue;
                if (lines.nanos() > nanos) return new SecondPass.Kept(nanos, lines.offset(), state);
                state = step(state, lines.recorded());
            }
        }
        return new SecondPass.Kept(nanos, Long.MAX_VALUE, state);
    }

    /** Where the engine stumbles the loop goes on with the state before; so do we. */
    private State step(State before, Recorded recorded) {
        try {
            Step step = Engine.step(recording.setup(), before, recorded.input());
            return step.after();
        } catch (RuntimeException bug) {
            return before;
        }
    }
}
