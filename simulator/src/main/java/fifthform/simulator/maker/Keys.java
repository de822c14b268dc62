package fifthform.simulator.maker;

import java.time.Duration;

/** How somebody tells by key where the bowl goes. */
public enum Keys {
    /** Never. */
    NONE,
    /** Up to four seconds after the hands, and one time in seven not at all. */
    LATE,
    /** With the hands, every time. */
    EXACT;

    private static final double LATEST_SECONDS = 4;
    private static final double FORGOTTEN_FRACTION = 1 / 7.0;

    boolean pressed(Luck luck) {
        return this == EXACT || this == LATE && luck.uniform() >= FORGOTTEN_FRACTION;
    }

    Duration after(Luck luck) {
        if (this == EXACT) return Duration.ZERO;
        return Duration.ofMillis(Math.round(1000 * LATEST_SECONDS * luck.uniform()));
    }
}
