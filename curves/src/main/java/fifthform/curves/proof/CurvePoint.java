package fifthform.curves.proof;

import fifthform.curves.check.Require;

/**
 * One reading of a sample that cools.
 *
 * @param seconds since the recording began, s, 0 to a day
 * @param celsius −20 to 150 °C
 */
public record CurvePoint(double seconds, double celsius) {
    public CurvePoint {
        Require.within(seconds, 0, 86_400, "seconds");
        Require.within(celsius, -20, 150, "celsius");
    }
}
