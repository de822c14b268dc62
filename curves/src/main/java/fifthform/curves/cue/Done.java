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
 * @param seed whether a planned seed was asked for since the last melt, and whether the time for it is over
 * @param inRangeAt when the maker was told that the working range is reached; empty before, and once it is cooled again
 * @param liftedAt when a cue to lift was last over, the bowl being off the bath or taken for it; empty before the first, and
 *     once it is cooled again
 */
public record Done(double seededGrams, Seed seed, Optional<Instant> inRangeAt, Optional<Instant> liftedAt) {
    /** How far the asking for a planned seed is. Nobody is asked twice, since a key may have been forgotten. */
    public enum Seed {
        NOT_ASKED,
        ASKED,
        /** The way up has begun after it was asked for. */
        OVER
    }

    static final Done NOTHING = new Done(0, Seed.NOT_ASKED, Optional.empty(), Optional.empty());

    public Done {
        Require.within(seededGrams, 0, 1e6, "seededGrams");
        Objects.requireNonNull(seed, "seed");
        Objects.requireNonNull(inRangeAt, "inRangeAt");
        Objects.requireNonNull(liftedAt, "liftedAt");
    }

    /** An unweighed handful counts as well. */
    Done seeded(double grams) {
        return new Done(seededGrams + Math.max(grams, 1), seed, inRangeAt, liftedAt);
    }

    /** Whether a seed was asked for, its time is over, and no key said that it went in. */
    public boolean isSeedUnsaid() {
        return seed == Seed.OVER && seededGrams == 0;
    }

    /** Once this look has been taken, in this phase. */
    Done after(Look look, Phase phase) {
        if (phase == Phase.MELT) return NOTHING;
        boolean asks = seed == Seed.NOT_ASKED && look.due().containsKey(CueId.SEED_NOW);
        Seed asked = asks ? Seed.ASKED : seed;
        if (phase == Phase.COOL || phase == Phase.SEED)
            return new Done(seededGrams, asked, Optional.empty(), Optional.empty());
        boolean said = inRangeAt.isEmpty() && look.due().containsKey(CueId.IN_RANGE);
        boolean lifted = look.wasOpen(CueId.LIFT_NOW) && !look.due().containsKey(CueId.LIFT_NOW);
        Optional<Instant> now = Optional.of(look.situation().now());
        Seed over = asked == Seed.ASKED ? Seed.OVER : asked;
        return new Done(seededGrams, over, said ? now : inRangeAt, lifted ? now : liftedAt);
    }
}
