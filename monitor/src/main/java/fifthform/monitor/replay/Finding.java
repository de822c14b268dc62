package fifthform.monitor.replay;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing that went wrong, or that all went well.
 *
 * @param at when; empty where it is about the whole batch
 * @param words what, in a few words: the first of a batch is its headline
 * @param figures what that rests on, in figures; may be empty
 */
public record Finding(Optional<Instant> at, String words, String figures) {
    public Finding {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(figures, "figures");
    }
}
