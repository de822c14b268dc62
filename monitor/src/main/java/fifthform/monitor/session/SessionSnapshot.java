package fifthform.monitor.session;

import fifthform.curves.engine.State;
import fifthform.curves.review.Tally;
import fifthform.curves.setup.Setup;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that a screen may know of a session at one moment.
 *
 * @param setup the set-up in force
 * @param state what the engine knows
 * @param tally the batch's figures so far
 * @param trace the curve so far
 * @param rawCelsius the last reading as the wire said it, for when the engine cannot say more
 * @param fault what the engine stumbled over, if it did; readings are recorded all the same
 * @param publishedNanos when this was published, on the monotonic clock
 */
public record SessionSnapshot(
        Setup setup,
        State state,
        Tally tally,
        TraceView trace,
        OptionalDouble rawCelsius,
        Optional<String> fault,
        long publishedNanos) {
    public SessionSnapshot {
        Objects.requireNonNull(setup, "setup");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(tally, "tally");
        Objects.requireNonNull(trace, "trace");
        Objects.requireNonNull(rawCelsius, "rawCelsius");
        Objects.requireNonNull(fault, "fault");
    }
}
