package fifthform.curves.review;

import fifthform.curves.input.AlarmId;
import java.time.Instant;
import java.util.Objects;

/** The first thing that went wrong. */
public record Trouble(AlarmId what, Instant at) {
    public Trouble {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(at, "at");
    }
}
