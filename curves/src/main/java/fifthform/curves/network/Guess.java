package fifthform.curves.network;

import fifthform.curves.check.Require;
import fifthform.curves.input.MakerAction.Place;
import java.util.Objects;

/**
 * What the network says at one step.
 *
 * @param atSeconds end of the step, s since the start
 * @param baseCelsius mean reading of the last 4 s, °C; all kelvin here are above it
 * @param readSeconds when the last reading it knows of came, s since the start
 * @param readCelsius that reading, °C
 * @param ifNow where the chocolate turns if the bowl is lifted now; on the table, where it will turn
 * @param ifLater the same if it is lifted {@value #LATER_SECONDS} s later
 * @param bathFraction how likely the bowl stands over warm water, 0 to 1
 * @param tableFraction on the table
 * @param coldWaterFraction in cold water; the three sum to one
 * @param bulkKelvin where the chocolate is, the probe's lag undone
 */
public record Guess(
        double atSeconds,
        double baseCelsius,
        double readSeconds,
        double readCelsius,
        Points ifNow,
        Points ifLater,
        double bathFraction,
        double tableFraction,
        double coldWaterFraction,
        double bulkKelvin) {
    /** How much later the second turning point is asked for, s. */
    public static final double LATER_SECONDS = 4;

    public Guess {
        Require.finite(atSeconds, "atSeconds");
        Require.finite(baseCelsius, "baseCelsius");
        Require.finite(readSeconds, "readSeconds");
        Require.finite(readCelsius, "readCelsius");
        Objects.requireNonNull(ifNow, "ifNow");
        Objects.requireNonNull(ifLater, "ifLater");
        Require.within(bathFraction, 0, 1, "bathFraction");
        Require.within(tableFraction, 0, 1, "tableFraction");
        Require.within(coldWaterFraction, 0, 1, "coldWaterFraction");
        Require.finite(bulkKelvin, "bulkKelvin");
    }

    /** How likely the bowl stands there, 0 to 1. */
    public double fractionOf(Place place) {
        return switch (place) {
            case BATH -> bathFraction;
            case TABLE -> tableFraction;
            case COLD_WATER -> coldWaterFraction;
        };
    }
}
