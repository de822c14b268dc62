package fifthform.monitor.catalogue;

import fifthform.curves.recipe.Recipe;
import java.util.Objects;

/**
 * A recipe and where it was found.
 *
 * @param recipe the recipe
 * @param text its text, word for word
 * @param from built in or the maker's own
 * @param place the file, in words for people
 */
public record KnownRecipe(Recipe recipe, String text, From from, String place) {
    /** Who wrote it. */
    public enum From {
        BUILT_IN("built in"),
        OWN("own");

        private final String word;

        From(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public KnownRecipe {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(place, "place");
    }
}
