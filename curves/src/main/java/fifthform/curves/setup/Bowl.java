package fifthform.curves.setup;

import fifthform.curves.check.Require;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The bowl and what is in it.
 *
 * @param id the maker's name for it
 * @param material what it is made of
 * @param amountGrams mass of chocolate, 10 to 20 000 g, where the maker said it
 * @param learned what earlier batches in this bowl taught of its coast, where there were any
 * @param answers how it answered cold water in earlier batches
 */
public record Bowl(
        String id,
        BowlMaterial material,
        OptionalDouble amountGrams,
        Optional<LearnedCoast> learned,
        BowlAnswers answers) {
    /** The least chocolate in a bowl, g. Own choice. */
    public static final double LEAST_GRAMS = 10;

    /** The most chocolate in a bowl, g. Own choice. */
    public static final double MOST_GRAMS = 20_000;

    /** A bowl of which nothing is known. */
    public static final Bowl ANY = new Bowl("bowl", BowlMaterial.UNKNOWN, OptionalDouble.empty(), Optional.empty());

    public Bowl {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(material, "material");
        Require.within(amountGrams, LEAST_GRAMS, MOST_GRAMS, "amountGrams");
        Objects.requireNonNull(learned, "learned");
        Objects.requireNonNull(answers, "answers");
    }

    /** A bowl of which at most the coast is known. */
    public Bowl(String id, BowlMaterial material, OptionalDouble amountGrams, Optional<LearnedCoast> learned) {
        this(id, material, amountGrams, learned, BowlAnswers.NONE);
    }
}
