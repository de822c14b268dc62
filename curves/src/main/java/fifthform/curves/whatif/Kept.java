package fifthform.curves.whatif;

import fifthform.curves.crystal.CrystalWatch;
import java.time.Instant;
import java.util.Objects;

/**
 * The crystals at a moment, to be gone on from otherwise.
 *
 * @param at when
 * @param watch the crystals
 * @param shearPerSecond how it was stirred, 1/s
 */
record Kept(Instant at, CrystalWatch watch, double shearPerSecond) {
    Kept {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(watch, "watch");
    }
}
