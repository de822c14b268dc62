package fifthform.curves.recipe;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The built-in recipes, read from the resources. */
public final class BuiltIn {
    static final List<String> IDS = List.of("dark", "milk", "white", "two-ingredient-dark");

    private BuiltIn() {}

    static String text(String id) {
        try (InputStream bytes = BuiltIn.class.getResourceAsStream("/recipes/" + id + ".recipe")) {
            if (bytes == null) return fail("no built-in recipe " + id);
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One of them. */
    public static Recipe recipe(String id) {
        return RecipeText.parse(id + ".recipe", text(id)).fold(recipe -> recipe, problems -> fail(problems.toString()));
    }
}
