package fifthform.curves.recipe;

import java.util.Objects;

/**
 * Where one value of a recipe comes from.
 *
 * @param key the recipe's key, for example {@code "work low"}
 * @param text the source as the recipe names it; "common practice, no source" where there is none
 */
public record Source(String key, String text) {
    public Source {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(text, "text");
    }
}
