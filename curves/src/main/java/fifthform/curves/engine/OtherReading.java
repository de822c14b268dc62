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
 * @param withinKelvin expanded uncertainty of that estimate (two standard uncertainties), K
 */
public record OtherReading(Instant at, double celsius, OptionalDouble aboveKelvin, double withinKelvin) {
    public OtherReading {
        Objects.requireNonNull(at, "at");
        Require.finite(celsius, "celsius");
        Objects.requireNonNull(aboveKelvin, "aboveKelvin");
        Require.within(withinKelvin, 0, 1e6, "withinKelvin");
    }

    /** Whether the two cannot both be right, as far as this program's own reading is known. */
    public boolean disagrees() {
        return aboveKelvin.isPresent() && Math.abs(aboveKelvin.getAsDouble()) > withinKelvin;
    }
}
