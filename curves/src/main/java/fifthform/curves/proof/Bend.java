package fifthform.curves.proof;

import fifthform.curves.check.Require;

/**
 * Where the heat of crystallising bends the curve most.
 *
 * @param kelvinPerMinute slope there, −60 to 60 K/min
 * @param celsius temperature there, −20 to 150 °C
 * @param afterSeconds since the sample went into the ice, s
 */
public record Bend(double kelvinPerMinute, double celsius, double afterSeconds) {
    public Bend {
        Require.within(kelvinPerMinute, -60, 60, "kelvinPerMinute");
        Require.within(celsius, -20, 150, "celsius");
        Require.within(afterSeconds, 0, 86_400, "afterSeconds");
    }
}
