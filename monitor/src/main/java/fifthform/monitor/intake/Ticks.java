package fifthform.monitor.intake;

import java.time.Duration;

/** How often time is told to the engine when nothing else happens. */
public final class Ticks {
    /** A quarter of a second: fine enough for delays of one second, coarse enough to cost nothing. */
    public static final Duration EVERY = Duration.ofMillis(250);

    private Ticks() {}
}
