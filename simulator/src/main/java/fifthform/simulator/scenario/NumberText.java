package fifthform.simulator.scenario;

import java.time.Duration;

/** Numbers as a scenario writes them. */
final class NumberText {
    private NumberText() {}

    /** The number, or NaN where it is none. */
    static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException notANumber) {
            return Double.NaN;
        }
    }

    /** To the nearest millisecond. */
    static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
