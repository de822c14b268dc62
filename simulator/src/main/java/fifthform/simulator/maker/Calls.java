package fifthform.simulator.maker;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One kind of {@link Disturbance} in the course of a batch.
 *
 * @param kind how often and how long
 * @param from when the present or next one begins; empty until the first look, or where none ever comes
 * @param until when it ends
 * @param luck for the one after it
 */
record Calls(Disturbance kind, Optional<Instant> from, Instant until, Luck luck) {
    Calls {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(until, "until");
        Objects.requireNonNull(luck, "luck");
    }

    static Calls of(Disturbance kind, Luck luck) {
        return new Calls(kind, Optional.empty(), Instant.MIN, luck);
    }

    /** At this moment: the next one is drawn once the last is over. */
    Calls at(Instant now) {
        if (!kind.comes() || from.isPresent() && now.isBefore(until)) return this;
        Instant begins = now.plus(kind.pause(luck));
        Luck next = luck.after();
        return new Calls(kind, Optional.of(begins), begins.plus(kind.lasting(next)), next.after());
    }

    boolean present(Instant now) {
        return from.isPresent() && !now.isBefore(from.get()) && now.isBefore(until);
    }
}
