package fifthform.curves.cue;

import fifthform.curves.check.Require;
import fifthform.curves.recipe.Phase;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * What has been done and need not be said again.
 *
 * @param seededGrams seed that has been added since the last melt, g
 * @param inRangeAt when the maker was told that the working range is reached; empty before, and once it is cooled again
 * @param liftedAt when a cue to lift was last over, the bowl being off the bath or taken for it; empty before the first, and
 *     once it is cooled again
 */
public record Done(double seededGrams, Optional<Instant> inRangeAt, Optional<Instant> liftedAt) {
    static final Done NOTHING = new Done(0, Optional.empty(), Optional.empty());

    public Done {
        Require.within(seededGrams, 0, 1e6, "seededGrams");
        Objects.requireNonNull(inRangeAt, "inRangeAt");
        Objects.requireNonNull(liftedAt, "liftedAt");
    }

    /** An unweighed handful counts as well. */
    Done seeded(double grams) {
        return new Done(seededGrams + Math.max(grams, 1), inRangeAt, liftedAt);
    }

    /** Once this look has been taken, in this phase. */
    Done after(Look look, Phase phase) {
        if (phase == Phase.MELT) return NOTHING;
        if (phase == Phase.COOL || phase == Phase.SEED)
            return new Done(seededGrams, Optional.empty(), Optional.empty());
        boolean said = inRangeAt.isEmpty() && look.due().containsKey(CueId.IN_RANGE);
        boolean lifted = look.wasOpen(CueId.LIFT_NOW) && !look.due().containsKey(CueId.LIFT_NOW);
        Optional<Instant> now = Optional.of(look.situation().now());
        return new Done(seededGrams, said ? now : inRangeAt, lifted ? now : liftedAt);
    }
}
