package fifthform.curves.setting;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;

/**
 * A minute of a store, as the slow log keeps it.
 *
 * @param at its last reading
 * @param readings how many
 * @param meanCelsius their mean, °C
 * @param lowCelsius the lowest, °C
 * @param highCelsius the highest, °C
 */
public record StoreMinute(Instant at, int readings, double meanCelsius, double lowCelsius, double highCelsius) {
    public StoreMinute {
        Objects.requireNonNull(at, "at");
        if (readings < 1) throw new IllegalArgumentException("readings must be 1 or more, was " + readings);
        Require.within(lowCelsius, -40, 150, "lowCelsius");
        Require.within(highCelsius, lowCelsius, 150, "highCelsius");
        Require.within(meanCelsius, lowCelsius - 1e-6, highCelsius + 1e-6, "meanCelsius");
    }

    static StoreMinute of(Instant at, double celsius) {
        return new StoreMinute(at, 1, celsius, celsius, celsius);
    }

    StoreMinute with(Instant later, double celsius) {
        double low = Math.min(lowCelsius, celsius);
        double high = Math.max(highCelsius, celsius);
        double mean = meanCelsius + (celsius - meanCelsius) / (readings + 1);
        return new StoreMinute(later, readings + 1, Math.max(low, Math.min(high, mean)), low, high);
    }
}
