package fifthform.simulator.bench;

import fifthform.curves.cue.CueId;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * A cue to move the bowl, and what became of it.
 *
 * @param cue which
 * @param givenAt when
 * @param took until the bowl left the water; empty where it never did
 */
public record Answer(CueId cue, Instant givenAt, Optional<Duration> took) {
    /**
     * In time is within this: what the engine reckons with (3.5 s) and half as much again. Our own choice.
     */
    public static final Duration IN_TIME = Duration.ofMillis(5250);

    public Answer {
        Objects.requireNonNull(cue, "cue");
        Objects.requireNonNull(givenAt, "givenAt");
        Objects.requireNonNull(took, "took");
    }

    public boolean inTime() {
        return took.isPresent() && took.get().compareTo(IN_TIME) <= 0;
    }
}
