package fifthform.monitor.app;

import fifthform.curves.setup.Origin;

/**
 * The standing line of a session: what a newcomer must know of practice, and the cautions of a real one. Acts in braces
 * stand for their keys.
 */
final class Notices {
    private static final String PRACTICE =
            "Practice: an invented bowl, tempered by a simulated maker who does what the screen says. "
                    + "A filled band says what to do now. <faster> faster, <slower> slower, <quit> <quit> stops. "
                    + "With your own probe: monitor/run watch --probe PORT (monitor/run ports lists them).";

    /** The keys stand below; what they are for stands here. */
    static final String TRAINING =
            "Training: an invented bowl in your hands. It stands over hot water and is not stirred. "
                    + "Do what a filled band says: <step-done> does the step, or <bowl-moved>, <cold-water>, <stir>, <seed> and <dry> do what their names say. "
                    + "<quit> <quit> ends it; then you see how it really went.";

    private static final String REAL = "Hot water and steam scald: tilt the bowl away from you and dry its underside. "
            + "Run the laptop on battery while the probe is in the bowl. More in SAFETY.md.";

    private Notices() {}

    static String of(Origin origin) {
        return origin == Origin.SIMULATED ? PRACTICE : REAL;
    }
}
