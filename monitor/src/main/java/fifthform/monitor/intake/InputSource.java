package fifthform.monitor.intake;

import fifthform.curves.input.Recorded;
import java.util.Optional;

/** Where a session's inputs come from: the one difference between watching live and watching again. */
public interface InputSource {
    /** The next input, waited for if need be; empty when there will be no more. */
    Optional<Recorded> next() throws InterruptedException;
}
