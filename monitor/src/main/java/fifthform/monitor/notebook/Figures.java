package fifthform.monitor.notebook;

import fifthform.curves.review.Verdict;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a batch came to.
 *
 * @param peakCelsius highest temperature after the cool, °C
 * @param lowestCelsius lowest temperature in the cool, °C
 * @param overRange time above the working range
 * @param verdict how it went by its temperatures
 * @param crystals the last word about the seed, in data's spelling
 * @param seedLost whether heat likely cost the temper its seed at some time
 */
public record Figures(
        OptionalDouble peakCelsius,
        OptionalDouble lowestCelsius,
        Duration overRange,
        Verdict verdict,
        Optional<String> crystals,
        boolean seedLost) {
    /** Of a batch of which nothing is known. */
    static final Figures NONE = new Figures(
            OptionalDouble.empty(), OptionalDouble.empty(), Duration.ZERO, Verdict.UNFINISHED, Optional.empty(), false);

    public Figures {
        Objects.requireNonNull(peakCelsius, "peakCelsius");
        Objects.requireNonNull(lowestCelsius, "lowestCelsius");
        Objects.requireNonNull(overRange, "overRange");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(crystals, "crystals");
    }
}
