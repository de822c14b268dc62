package fifthform.monitor.start;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.settings.Units;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What there is to choose from.
 *
 * @param recipes at least one
 * @param bowls those that were used before
 * @param last how the last real batch was begun
 * @param cutOff the batch that can be gone on with, in words
 */
public record StartStock(
        List<Recipe> recipes, List<KeptBowl> bowls, LastStart last, Optional<String> cutOff, Units units) {
    public StartStock {
        recipes = List.copyOf(recipes);
        bowls = List.copyOf(bowls);
        Objects.requireNonNull(last, "last");
        Objects.requireNonNull(cutOff, "cutOff");
        Objects.requireNonNull(units, "units");
        if (recipes.isEmpty()) throw new IllegalArgumentException("there must be a chocolate");
    }
}
