package fifthform.curves.contrast;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Recipe;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing to try in the next batch: to do it as the fine batches had it, within what the recipe holds for right.
 *
 * @param trait what
 * @param way to which side
 * @param value °C or minutes; 1 or 0 of a yes or no
 */
public record Suggestion(Trait trait, Way way, double value) {
    /** To which side. */
    public enum Way {
        AT_MOST,
        AT_LEAST,
        WITH,
        WITHOUT;

        /** The word in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Longer in the cool range thickens: as the engine has it, so many times the recipe's hold. */
    private static final double LONGEST_HOLDS = 2.5;

    private static final double TENTHS = 10;

    public Suggestion {
        Objects.requireNonNull(trait, "trait");
        Objects.requireNonNull(way, "way");
    }

    /** What a difference leads to; empty where the recipe's own targets leave nothing to try. */
    static Optional<Suggestion> from(Contrast contrast, Recipe recipe) {
        boolean less = contrast.higher() == Contrast.Higher.IN_MARKED;
        if (contrast.trait().unit() == Trait.Unit.YES_NO) {
            return Optional.of(new Suggestion(contrast.trait(), less ? Way.WITHOUT : Way.WITH, less ? 0 : 1));
        }
        double low = low(contrast.trait(), recipe);
        double high = high(contrast.trait(), recipe);
        double value = Math.max(low, Math.min(high, rounded(contrast.trait(), contrast.fineMiddle(), less)));
        boolean helps = less ? value < contrast.markedMiddle() : value > contrast.markedMiddle();
        return helps
                ? Optional.of(new Suggestion(contrast.trait(), less ? Way.AT_MOST : Way.AT_LEAST, value))
                : Optional.empty();
    }

    private static double rounded(Trait trait, double value, boolean down) {
        double steps = trait.unit() == Trait.Unit.CELSIUS ? TENTHS : 1;
        return (down ? Math.floor(value * steps + 1e-6) : Math.ceil(value * steps - 1e-6)) / steps;
    }

    private static double low(Trait trait, Recipe recipe) {
        CelsiusRange work = recipe.work().range();
        return switch (trait) {
            case HEAT -> work.highCelsius();
            case LOWEST -> recipe.cool().range().lowCelsius();
            case COOL_MINUTES -> recipe.cool().dwell().toSeconds() / 60.0;
            case POURING -> work.lowCelsius();
            case SEED, FRIDGE -> 0;
        };
    }

    private static double high(Trait trait, Recipe recipe) {
        return switch (trait) {
            case HEAT -> recipe.meltOut().warnCelsius();
            case LOWEST -> recipe.cool().range().highCelsius();
            case COOL_MINUTES -> LONGEST_HOLDS * recipe.cool().dwell().toSeconds() / 60.0;
            case POURING -> recipe.work().range().highCelsius();
            case SEED, FRIDGE -> 1;
        };
    }
}
