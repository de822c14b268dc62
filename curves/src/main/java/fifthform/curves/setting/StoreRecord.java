package fifthform.curves.setting;

import java.time.Duration;
import java.util.Objects;

/**
 * What a store did to the bars in it, as far as it was watched.
 *
 * @param watched time that was read
 * @param unread time between readings in which nothing is known
 * @param lowestCelsius °C; +∞ before the first reading
 * @param highestCelsius °C; −∞ before the first reading
 * @param aboveRecommended time above 20 °C
 * @param aboveLimit time above 24 °C
 * @param melting time above 28 °C
 * @param largestSwingKelvin the largest difference within one day, K
 */
public record StoreRecord(
        Duration watched,
        Duration unread,
        double lowestCelsius,
        double highestCelsius,
        Duration aboveRecommended,
        Duration aboveLimit,
        Duration melting,
        double largestSwingKelvin) {
    static final StoreRecord NOTHING = new StoreRecord(
            Duration.ZERO,
            Duration.ZERO,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Duration.ZERO,
            Duration.ZERO,
            Duration.ZERO,
            0);

    public StoreRecord {
        Objects.requireNonNull(watched, "watched");
        Objects.requireNonNull(unread, "unread");
        Objects.requireNonNull(aboveRecommended, "aboveRecommended");
        Objects.requireNonNull(aboveLimit, "aboveLimit");
        Objects.requireNonNull(melting, "melting");
    }

    /** Whether anything was read. */
    public boolean isEmpty() {
        return highestCelsius == Double.NEGATIVE_INFINITY;
    }

    StoreRecord with(StoreMinute minute, Duration passed, boolean gap, double swingKelvin) {
        Duration known = gap ? Duration.ZERO : passed;
        double mean = minute.meanCelsius();
        return new StoreRecord(
                watched.plus(known),
                gap ? unread.plus(passed) : unread,
                Math.min(lowestCelsius, minute.lowCelsius()),
                Math.max(highestCelsius, minute.highCelsius()),
                mean > StoreWatch.RECOMMENDED_CELSIUS ? aboveRecommended.plus(known) : aboveRecommended,
                mean > StoreWatch.LIMIT_CELSIUS ? aboveLimit.plus(known) : aboveLimit,
                mean > StoreWatch.MELTING_CELSIUS ? melting.plus(known) : melting,
                Math.max(largestSwingKelvin, swingKelvin));
    }
}
