package fifthform.simulator.rivals;

import fifthform.curves.setup.LearnedCoast;
import java.util.Objects;
import java.util.Optional;

/**
 * What the engine is told before a batch.
 *
 * @param told of the kitchen
 * @param learned what earlier batches taught of the bowl
 */
record Knowledge(Told told, Optional<LearnedCoast> learned) {
    /** What is told of the kitchen. */
    enum Told {
        /** The recipe, nothing else. */
        NOTHING,
        /** The bowl's material and the amount in it. */
        BOWL,
        /** Those, and a probe hangs in the bath. */
        BOWL_AND_BATH
    }

    static final Knowledge NOTHING = new Knowledge(Told.NOTHING, Optional.empty());
    static final Knowledge BOWL_AND_BATH = new Knowledge(Told.BOWL_AND_BATH, Optional.empty());

    Knowledge {
        Objects.requireNonNull(told, "told");
        Objects.requireNonNull(learned, "learned");
    }

    /** A bowl that is known by its material and amount, and by what it did before. */
    static Knowledge of(Optional<LearnedCoast> learned) {
        return new Knowledge(Told.BOWL, learned);
    }
}
