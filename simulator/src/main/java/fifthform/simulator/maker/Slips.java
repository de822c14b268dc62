package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import java.time.Duration;

/**
 * What somebody leaves out.
 *
 * @param forgetsFraction how often something noticed slips the mind, 0 to 1
 * @param noticesAgainSeconds mean time until it is noticed again, 1 to 600 s
 * @param wipesFraction how often the outside is wiped after a lift, 0 to 1
 * @param wipesAfter so long after the bowl left the water
 * @param pressesFraction how often what is done is told by key as well, 0 to 1
 */
record Slips(
        double forgetsFraction,
        double noticesAgainSeconds,
        double wipesFraction,
        Duration wipesAfter,
        double pressesFraction) {
    /** Nothing is left out. */
    static final Slips NONE = new Slips(0, 1, 1, Duration.ofSeconds(20), 1);

    Slips {
        Require.within(forgetsFraction, 0, 1, "forgetsFraction");
        Require.within(noticesAgainSeconds, 1, 600, "noticesAgainSeconds");
        Require.within(wipesFraction, 0, 1, "wipesFraction");
        Require.notNegative(wipesAfter, "wipesAfter");
        Require.within(pressesFraction, 0, 1, "pressesFraction");
    }
}
