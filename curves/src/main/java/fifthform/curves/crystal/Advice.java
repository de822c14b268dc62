package fifthform.curves.crystal;

import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What to do after heat that may have cost the temper, with the figures it rests on.
 *
 * @param what the advice
 * @param overshoot how hot and how long, what was there before and what is left
 * @param word what can be said of the seed now
 * @param seedGrams how much tempered chocolate would do, g, where the amount in the bowl is known
 */
public record Advice(What what, Overshoot overshoot, SeedWord word, OptionalDouble seedGrams) {
    /** Share of the bowl's mass in seed that leaves 2.6 % of the fat at 34 °C and more below (the model's own figure). */
    static final double SEED_SHARE = 0.05;

    /** What a maker can do. */
    public enum What {
        /** Stop warming and go on: enough seed is likely to have survived. Prove it on a sample. */
        STOP,
        /** Cool it to the cool range again, hold and rewarm: too little is left, or nobody can tell. */
        COOL_AGAIN,
        /** Stop warming and add tempered chocolate once it is below melt-out. */
        SEED;

        /** The word in files: {@code stop}, {@code cool-again}, {@code seed}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public Advice {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(overshoot, "overshoot");
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(seedGrams, "seedGrams");
    }

    /**
     * The advice after an overshoot.
     *
     * @param seedAtHand whether the maker has seed ready
     * @param bowlGrams what is in the bowl
     */
    static Advice after(Overshoot overshoot, SeedWord word, boolean seedAtHand, OptionalDouble bowlGrams) {
        What what = word == SeedWord.ENOUGH ? What.STOP : seedAtHand ? What.SEED : What.COOL_AGAIN;
        OptionalDouble grams = bowlGrams.isPresent()
                ? OptionalDouble.of(SEED_SHARE * bowlGrams.getAsDouble())
                : OptionalDouble.empty();
        return new Advice(what, overshoot, word, grams);
    }
}
