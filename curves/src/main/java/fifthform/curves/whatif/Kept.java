package fifthform.curves.whatif;

import fifthform.curves.crystal.CrystalWatch;
import fifthform.curves.crystal.StirWatch;
import java.time.Instant;
import java.util.Objects;

/**
 * The crystals at a moment, to be gone on from otherwise.
 *
 * @param at when
 * @param watch the crystals
 * @param stir how it was stirred
 */
record Kept(Instant at, CrystalWatch watch, StirWatch stir) {
    Kept {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(watch, "watch");
        Objects.requireNonNull(stir, "stir");
    }
}
