package fifthform.monitor.practice;

import fifthform.curves.cue.CueId;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * A cue to move the bowl, and how late it was answered.
 *
 * @param cue which
 * @param at when it was given
 * @param took until the bowl was moved as it asked, in the kitchen's time; empty where it never was
 */
public record CueAnswer(CueId cue, Instant at, Optional<Duration> took) {
    public CueAnswer {
        Objects.requireNonNull(cue, "cue");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(took, "took");
    }
}
