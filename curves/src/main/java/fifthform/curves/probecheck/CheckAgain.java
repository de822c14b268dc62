package fifthform.curves.probecheck;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** When a probe is to be checked again. */
public final class CheckAgain {
    /** Twice a year for a thermometer that is used often (common practice, no source). */
    public static final Duration USUAL = Duration.ofDays(180);
    /** After a drift, to see whether it goes on; own choice. */
    public static final Duration AFTER_DRIFT = Duration.ofDays(30);

    private CheckAgain() {}

    /** When the next check is due after one at {@code checkedAt}. */
    public static Instant due(Instant checkedAt, Optional<Drift> drift) {
        return checkedAt.plus(drift.filter(Drift::isSeen).isPresent() ? AFTER_DRIFT : USUAL);
    }
}
