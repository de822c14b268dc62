package fifthform.curves.whatif;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Input;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * A batch as far as a what-if needs it: the readings as they were believed, where the bowl stood, and the crystals at
 * the turns. {@link Trail} collects it from an engine's steps.
 */
public final class PastBatch {
    private final Setup setup;
    private final List<PastLift> lifts;

    PastBatch(Setup setup, List<PastLift> lifts) {
        this.setup = Objects.requireNonNull(setup, "setup");
        this.lifts = List.copyOf(lifts);
    }

    /**
     * Goes through a recording.
     *
     * @param header the set-up of its first line
     * @param start when it started
     * @param inputs all its inputs, in order
     */
    public static PastBatch of(Setup header, Instant start, Iterable<? extends Input> inputs) {
        Trail trail = new Trail(header);
        State state = Engine.start(header, start);
        for (Input input : inputs) {
            Step step = Engine.step(header, state, input);
            trail.take(state, step);
            state = step.after();
        }
        return trail.batch();
    }

    /** The set-up that was in force at the end. */
    public Setup setup() {
        return setup;
    }

    /** The lifts that a {@link Change} may be about, oldest first. */
    public List<PastLift> lifts() {
        return lifts;
    }
}
