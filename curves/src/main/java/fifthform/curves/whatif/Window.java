package fifthform.curves.whatif;

import java.time.Instant;
import java.util.Objects;

/**
 * The readings around one lift, as numbers.
 *
 * @param zero its beginning
 * @param course where the bowl stood
 * @param at times of the readings, s after the beginning
 * @param tip the readings, °C
 * @param bathCelsius mean of the bath's probe while the bowl stood in it; NaN where there is none
 */
record Window(Instant zero, Course course, double[] at, double[] tip, double bathCelsius) {
    Window {
        Objects.requireNonNull(zero, "zero");
        Objects.requireNonNull(course, "course");
    }
}
