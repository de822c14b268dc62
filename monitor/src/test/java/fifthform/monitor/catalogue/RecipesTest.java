package fifthform.monitor.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.check.Problem;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.monitor.catalogue.KnownRecipe.From;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecipesTest {
    @TempDir
    Path folder;

    @Test
    void knowsTheBuiltInChocolates() {
        Recipes recipes = Recipes.load(folder.resolve("none"));
        assertEquals(List.of(), recipes.problems());
        List<String> ids =
                recipes.known().stream().map(known -> known.recipe().id()).toList();
        assertTrue(ids.containsAll(List.of("dark", "milk", "white", "two-ingredient-dark")), ids::toString);
        assertTrue(recipes.known().stream().allMatch(known -> known.from() == From.BUILT_IN));
    }

    @Test
    void findsThemInsideAJarToo() throws IOException {
        Path jar = folder.resolve("program.jar");
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(file)) {
            for (String name : List.of("other/x.recipe", "recipes/b.recipe", "recipes/a.recipe", "recipes/notes.txt")) {
                entries.putNextEntry(new JarEntry(name));
                entries.write(("text of " + name).getBytes(StandardCharsets.UTF_8));
            }
        }
        assertEquals(
                Map.of("a.recipe", "text of recipes/a.recipe", "b.recipe", "text of recipes/b.recipe"),
                BuiltInRecipes.texts(jar));
    }

    @Test
    void theMakersOwnWinsAndThatIsSaid() throws IOException {
        write("mine.recipe", dark().replace("name = ", "name = My "));
        Recipes recipes = Recipes.load(folder);
        KnownRecipe found = recipes.find("dark").fold(known -> known, problems -> fail(problems.toString()));
        assertEquals(From.OWN, found.from());
        assertTrue(found.recipe().name().startsWith("My "));
        assertTrue(recipes.remarks().get(0).contains("\"dark\" is your own recipe"), recipes.remarks()::toString);
        assertEquals(List.of(), recipes.problems());
    }

    @Test
    void oneBadFileIsSaidAndTakesNothingElseAway() throws IOException {
        write("a.recipe", dark().replace("id = dark", "id = first").replace("work low = 31 C", "work low = 40 C"));
        write("b.recipe", dark().replace("id = dark", "id = second"));
        Files.write(folder.resolve("c.recipe"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        write("notes.txt", "no recipe");
        Recipes recipes = Recipes.load(folder);
        assertEquals("found", recipes.find("second").fold(known -> "found", problems -> "refused"));
        assertEquals("refused", recipes.find("first").fold(known -> "found", problems -> "refused"));
        List<String> said = recipes.problems().stream().map(Problem::where).toList();
        assertEquals(2, said.size(), said::toString);
        assertTrue(said.get(0).startsWith("a.recipe, line "), said::toString);
        assertEquals("c.recipe", said.get(1));
    }

    @Test
    void twoOwnRecipesWithOneIdAreSaid() throws IOException {
        write("a.recipe", dark());
        write("b.recipe", dark());
        Recipes recipes = Recipes.load(folder);
        assertEquals(1, recipes.problems().size());
        assertTrue(recipes.problems().get(0).what().contains("a.recipe"));
    }

    @Test
    void aPathNamesARecipeAnywhere() throws IOException {
        write("guest.recipe", dark().replace("id = dark", "id = guest"));
        Recipes recipes = Recipes.load(folder.resolve("none"));
        String path = folder.resolve("guest.recipe").toString();
        assertEquals("guest", recipes.find(path).fold(known -> known.recipe().id(), Object::toString));
        String said = recipes.find(folder.resolve("gone.recipe").toString()).fold(known -> "found", Object::toString);
        assertTrue(said.contains("no such file"), said);
    }

    @Test
    void anUnknownChocolateGetsTheNearestAndTheList() {
        String said = Recipes.load(folder).find("drak").fold(known -> "found", Object::toString);
        assertTrue(said.contains("Did you mean \"dark\"?") && said.contains("milk") && said.contains("white"), said);
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private static String dark() {
        return Recipes.load(Path.of("none")).find("dark").fold(KnownRecipe::text, problems -> fail("" + problems));
    }

    @Test
    void theTextOfAKnownRecipeIsWordForWord() {
        assertTrue(dark().startsWith("# One of the built-in chocolates."));
        assertEquals("dark", RecipeText.parse("x", dark()).fold(Recipe::id, Object::toString));
    }
}
