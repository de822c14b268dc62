package fifthform.curves.input;

import java.time.Instant;

/** Everything the engine may ever learn, each with the time at which it became true. */
public sealed interface Input permits Sample, ProbeFault, MakerAction, StoreTrouble, Tick {
    /** When it became true. */
    Instant at();

    /** Calls the method for this kind; a new kind does not compile until every caller handles it. */
    <R> R fold(Cases<R> cases);

    /** One answer for each kind of input. */
    interface Cases<R> {
        R sample(Sample sample);

        R fault(ProbeFault fault);

        R action(MakerAction action);

        R storeTrouble(StoreTrouble trouble);

        R tick(Tick tick);
    }
}
