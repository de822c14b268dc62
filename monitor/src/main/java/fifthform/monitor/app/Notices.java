package fifthform.monitor.app;

import fifthform.curves.setup.Origin;
import java.util.Optional;

/** The standing line of a session: what a newcomer must know of practice, and the cautions of a real one. */
final class Notices {
    private static final String PRACTICE =
            "Practice: an invented bowl, tempered by a simulated maker who does what the screen says. "
                    + "A filled band says what to do now. + faster, – slower, Q Q stops. "
                    + "With your own probe: fifthform watch --probe PORT (fifthform ports lists them).";

    private static final String REAL = "Hot water and steam scald: tilt the bowl away from you and dry its underside. "
            + "Run the laptop on battery while the probe is in the bowl. More in SAFETY.md.";

    private Notices() {}

    static Optional<String> of(Origin origin) {
        return Optional.of(origin == Origin.SIMULATED ? PRACTICE : REAL);
    }
}
