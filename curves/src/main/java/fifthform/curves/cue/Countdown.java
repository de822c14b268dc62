package fifthform.curves.cue;

import fifthform.curves.check.Require;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * Seconds shown until an act. The forecast wavers from reading to reading; a number that jumps up again makes hands
 * hesitate. So what is shown follows it downwards at up to twice the speed of time, waits where it has run ahead, and
 * never grows.
 *
 * @param seconds what is shown, s
 * @param at as of when
 */
public record Countdown(double seconds, Instant at) {
    private static final double FASTEST = 2;

    public Countdown {
        Require.within(seconds, 0, 3600, "seconds");
        Objects.requireNonNull(at, "at");
    }

    Countdown follows(double freshSeconds, Instant now) {
        double passed = Math.max(0, Duration.between(at, now).toMillis() / 1000.0);
        double least = seconds - FASTEST * passed;
        return new Countdown(Math.max(0, Math.min(seconds, Math.max(least, freshSeconds))), now);
    }
}
