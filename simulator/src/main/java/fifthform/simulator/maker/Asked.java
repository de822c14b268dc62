package fifthform.simulator.maker;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * What was asked of somebody who judges a forecast and is not done yet.
 *
 * @param due when the hands get to it
 * @param act what they do
 * @param time how long the bowl goes back over the water, or is stirred on; zero for the others
 */
record Asked(Instant due, Act act, Duration time) {
    enum Act {
        LIFT,
        /** Over the warm water, for the first time or once more. */
        PUT_BACK,
        /** Taken out of the cold water too soon. */
        BACK_INTO_THE_COLD,
        POUR,
        /** Goes on making crystals for this time; done when it is over. */
        STIR_ON
    }

    Asked {
        Objects.requireNonNull(due, "due");
        Objects.requireNonNull(act, "act");
        Objects.requireNonNull(time, "time");
    }
}
