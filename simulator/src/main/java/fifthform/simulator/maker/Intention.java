package fifthform.simulator.maker;

import java.time.Instant;
import java.util.Objects;

/**
 * Something noticed and not done yet.
 *
 * @param due when the hands get to it
 * @param response what they will do
 * @param reason why
 */
record Intention(Instant due, Response response, Reason reason) {
    enum Reason {
        /** The program said so. */
        TOLD,
        /** The thermometer or the clock. */
        SEEN
    }

    Intention {
        Objects.requireNonNull(due, "due");
        Objects.requireNonNull(response, "response");
        Objects.requireNonNull(reason, "reason");
    }
}
