package fifthform.curves.engine;

import fifthform.curves.check.Require;
import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What another thermometer said, beside what was believed at that moment.
 *
 * @param at when it was said
 * @param celsius what it said, °C
 * @param aboveKelvin how much more that is than the estimate then; empty where there was none to trust
 * @param withinKelvin how far apart the two may be before the probe is to be checked: twice the standard uncertainty of
 *     the estimate, K, but of an unchecked probe no more than matters to a batch
 */
public record OtherReading(Instant at, double celsius, OptionalDouble aboveKelvin, double withinKelvin) {
    public OtherReading {
        Objects.requireNonNull(at, "at");
        Require.finite(celsius, "celsius");
        Objects.requireNonNull(aboveKelvin, "aboveKelvin");
        Require.within(withinKelvin, 0, 1e6, "withinKelvin");
    }

    /** Whether the two are too far apart to go on without checking the probe. */
    public boolean disagrees() {
        return aboveKelvin.isPresent() && Math.abs(aboveKelvin.getAsDouble()) > withinKelvin;
    }
}
