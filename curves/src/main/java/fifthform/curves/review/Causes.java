package fifthform.curves.review;

import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.setup.Setup;
import java.util.List;
import java.util.Optional;

/**
 * What went wrong first: the causes of a batch, counted step by step as {@link Tally} counts its figures. Built from what
 * the engine says only; a few hundred bytes however long the batch.
 */
public final class Causes {
    private static final Causes START = new Causes();

    private Causes() {}

    /** Before the first input. */
    public static Causes start(State start) {
        return START;
    }

    /**
     * After one more step.
     *
     * @param setup the set-up in force
     */
    public Causes with(Setup setup, State before, Step step) {
        return this;
    }

    /** Everything that went wrong up to here, earliest first; faults and remarks. */
    public List<Cause> all() {
        return List.of();
    }

    /** The faults, earliest first. */
    public List<Cause> faults() {
        return all().stream()
                .filter(c -> c.kind().weight() == Cause.Weight.FAULT)
                .toList();
    }

    /** What went wrong first. */
    public Optional<Cause> first() {
        return faults().stream().findFirst();
    }
}
