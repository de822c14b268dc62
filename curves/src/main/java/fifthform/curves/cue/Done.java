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
 */
public record Done(double seededGrams, Optional<Instant> inRangeAt) {
    static final Done NOTHING = new Done(0, Optional.empty());

    public Done {
        Require.within(seededGrams, 0, 1e6, "seededGrams");
        Objects.requireNonNull(inRangeAt, "inRangeAt");
    }

    /** An unweighed handful counts as well. */
    Done seeded(double grams) {
        return new Done(seededGrams + Math.max(grams, 1), inRangeAt);
    }

    /** Once this look has been taken, in this phase. */
    Done after(Look look, Phase phase) {
        if (phase == Phase.MELT) return NOTHING;
        if (phase == Phase.COOL || phase == Phase.SEED) return new Done(seededGrams, Optional.empty());
        boolean said = inRangeAt.isEmpty() && look.due().containsKey(CueId.IN_RANGE);
        return said ? new Done(seededGrams, Optional.of(look.situation().now())) : this;
    }
}
