package fifthform.curves.engine;

import fifthform.curves.crystal.Temper;
import fifthform.curves.forecast.Coasting;
import fifthform.curves.input.MakerAction.BowlMoved;
import fifthform.curves.phase.Batch;
import fifthform.curves.setup.Setup;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * What the maker's last act changed, as it was before.
 *
 * @param sequence the act's place in the order of inputs
 * @param at when it was done
 * @param crystals where it changed them too
 */
public record Undoable(
        long sequence,
        Instant at,
        Batch batch,
        Coasting coasting,
        Optional<Setup> changedSetup,
        Optional<Instant> outSince,
        Optional<BowlMoved> moved,
        Optional<Temper> crystals) {
    public Undoable {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(coasting, "coasting");
        Objects.requireNonNull(changedSetup, "changedSetup");
        Objects.requireNonNull(outSince, "outSince");
        Objects.requireNonNull(moved, "moved");
        Objects.requireNonNull(crystals, "crystals");
    }
}
