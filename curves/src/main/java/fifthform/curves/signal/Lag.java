package fifthform.curves.signal;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;

/**
 * Time constant of a tip in chocolate, as a dip showed it. It is the cause of a bias (rate × τ), which the estimate takes
 * away; only what is unsure about it is an uncertainty.
 *
 * @param at when it was known
 * @param seconds τ, s
 * @param sigmaSeconds its standard uncertainty, s
 */
public record Lag(Instant at, double seconds, double sigmaSeconds) {
    public Lag {
        Objects.requireNonNull(at, "at");
        Require.within(seconds, 0, 120, "seconds");
        Require.within(sigmaSeconds, 0, 120, "sigmaSeconds");
    }
}
