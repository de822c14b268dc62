package fifthform.monitor.replay;

import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * One question and its simulated answer.
 *
 * @param change what would have been done otherwise, for example {@code lifted 18 s earlier}
 * @param answer what would have come of it, with its band
 * @param course the simulated curve with its band, drawn into the trace while the question is chosen; may be empty
 */
public record WhatIf(String change, String answer, List<Point> course) {
    public WhatIf {
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(answer, "answer");
        course = List.copyOf(course);
    }

    /**
     * A point of the simulated curve.
     *
     * @param at since the session's start
     * @param celsius the middle, °C
     * @param lowerCelsius lower end of the band, °C
     * @param upperCelsius upper end of the band, °C
     */
    public record Point(Duration at, double celsius, double lowerCelsius, double upperCelsius) {
        public Point {
            Objects.requireNonNull(at, "at");
        }
    }
}
