package fifthform.simulator.rivals;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The recipes that come with the program, each read once. */
final class Shelf {
    private static final Map<String, Recipe> READ = new ConcurrentHashMap<>();

    private Shelf() {}

    static Recipe recipe(String id) {
        return READ.computeIfAbsent(id, Shelf::read);
    }

    private static Recipe read(String id) {
        try (InputStream in = Recipe.class.getResourceAsStream("/recipes/" + id + ".recipe")) {
            if (in == null) throw new IllegalArgumentException("there is no recipe " + id);
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return RecipeText.parse(id, text).fold(r -> r, problems -> {
                throw new IllegalStateException(problems.toString());
            });
        } catch (IOException e) {
            throw new UncheckedIOException("the recipe " + id + " cannot be read", e);
        }
    }
}
