package fifthform.simulator.bench;

import fifthform.curves.check.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * How many of how many, and what that says of the true share.
 *
 * @param hits how many
 * @param of out of so many
 * @param interval at {@link Interval#LEVEL}; empty where there were none to count
 */
public record Share(long hits, long of, Optional<Interval> interval) {
    public Share {
        Require.within(of, 0, Integer.MAX_VALUE, "of");
        Require.within(hits, 0, of, "hits");
        Objects.requireNonNull(interval, "interval");
    }

    static Share of(long hits, long of) {
        return new Share(hits, of, of == 0 ? Optional.empty() : Optional.of(Interval.ofProportion(hits, of)));
    }
}
