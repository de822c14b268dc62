package fifthform.monitor.replay;

import java.util.Objects;
import java.util.Optional;

/**
 * A line of a list on the Replay screen.
 *
 * @param nanos the moment it is about, ns since the session's start; empty where it is about no moment
 * @param time that moment as it is written; may be empty
 * @param words what
 * @param detail more of it, in figures; may be empty
 * @param sign the mark before it
 */
public record ListRow(Optional<Long> nanos, String time, String words, String detail, Optional<Happening.Sign> sign) {
    public ListRow {
        Objects.requireNonNull(nanos, "nanos");
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(detail, "detail");
        Objects.requireNonNull(sign, "sign");
    }
}
