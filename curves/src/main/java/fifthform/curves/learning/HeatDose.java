package fifthform.curves.learning;

import fifthform.curves.check.Require;
import java.time.Duration;

/**
 * The heat that a batch's crystals had after they were made.
 *
 * @param equivalentCelsius height and length as one number, °C; see {@link HeatScale}
 * @param highestCelsius highest temperature, °C
 * @param overRange time above the working range
 */
public record HeatDose(double equivalentCelsius, double highestCelsius, Duration overRange) {
    public HeatDose {
        Require.finite(equivalentCelsius, "equivalentCelsius");
        Require.finite(highestCelsius, "highestCelsius");
        Require.notNegative(overRange, "overRange");
    }
}
