package fifthform.monitor.bowls;

import fifthform.curves.check.Require;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlAnswers;
import fifthform.curves.setup.LearnedCoast;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a bowl taught with one amount in it.
 *
 * @param amountGrams the amount; empty for batches of which nobody said it
 * @param coast its coast; empty where only its answers to cold water were seen
 * @param answers how it answered cold water
 * @param batches how many batches it rests on; 0 where the maker set it by hand
 * @param at when the last of them ended, or it was set
 * @param session the last of them; empty where it was set by hand
 */
public record Taught(
        OptionalDouble amountGrams,
        Optional<LearnedCoast> coast,
        BowlAnswers answers,
        int batches,
        Instant at,
        Optional<String> session) {
    /** Amounts closer than this factor are one amount: nobody weighs what sticks to the spoon. Own choice. */
    private static final double SAME_FACTOR = 1.15;

    /** The same as people say it. */
    public static final int SAME_PERCENT = 15;

    public Taught {
        Require.within(amountGrams, Bowl.LEAST_GRAMS, Bowl.MOST_GRAMS, "amountGrams");
        Objects.requireNonNull(coast, "coast");
        Objects.requireNonNull(answers, "answers");
        Require.within(batches, 0, 1e6, "batches");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(session, "session");
    }

    /** Whether batches with this amount belong to it. */
    boolean isOf(OptionalDouble grams) {
        if (amountGrams.isEmpty() || grams.isEmpty()) return amountGrams.isEmpty() == grams.isEmpty();
        return farFrom(grams.getAsDouble()) <= Math.log(SAME_FACTOR);
    }

    /** How far another amount is away, as a logarithm; infinitely far where this amount is not known. */
    double farFrom(double grams) {
        return amountGrams.isEmpty() ? Double.POSITIVE_INFINITY : Math.abs(Math.log(grams / amountGrams.getAsDouble()));
    }
}
