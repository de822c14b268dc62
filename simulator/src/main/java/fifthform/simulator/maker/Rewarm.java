package fifthform.simulator.maker;

import fifthform.curves.check.Require;
import fifthform.simulator.bowl.Spot;
import java.time.Duration;
import java.util.Objects;

/**
 * What somebody who judges a forecast means to do with the rewarm.
 *
 * @param manner what they do about what is said
 * @param keys how they tell where the bowl goes
 * @param water over which water: {@code HOT_BATH}, the steam of the pot that melted it, or {@code WARM_BATH}
 * @param lowCelsius where the working range begins on their thermometer, °C
 * @param patience in the rewarm, from the first time over the water
 */
public record Rewarm(Manner manner, Keys keys, Spot water, double lowCelsius, Duration patience) {
    /** Whoever stays whatever is said leaves when this far above the range, K. */
    static final double LEAVES_AT_KELVIN = 5;

    private static final Duration FORGOTTEN_FOR = Duration.ofHours(2);

    public Rewarm {
        Objects.requireNonNull(manner, "manner");
        Objects.requireNonNull(keys, "keys");
        Objects.requireNonNull(water, "water");
        Require.within(lowCelsius, 20, 40, "lowCelsius");
        Require.notNegative(patience, "patience");
    }

    /** The same with another manner. */
    public Rewarm in(Manner other) {
        return new Rewarm(other, keys, water, lowCelsius, patience);
    }

    /** Over that water, for as long as it takes. */
    Rewarm forgotten(Spot over) {
        return new Rewarm(Manner.STAYS_ON, keys, over, lowCelsius, FORGOTTEN_FOR);
    }
}
