package fifthform.monitor.settings;

import java.time.Instant;
import java.util.Objects;

/**
 * Whether the urgent sound was heard at the stove with the fan on.
 *
 * @param at when the maker answered
 * @param heard the answer
 * @param volume how loud it was played
 */
public record Hearing(Instant at, boolean heard, Volume volume) {
    public Hearing {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(volume, "volume");
    }
}
