package fifthform.monitor.setup;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.recipe.CompositionTargets;
import fifthform.curves.recipe.Ingredients;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.recipe.WorkedTargets;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.settings.KeptFiles;
import fifthform.monitor.texts.SetupText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The chocolates in Setup: looked at, copied, changed as a copy of one's own, and worked out from a composition. */
public final class Chocolates {
    private final Path folder;

    /** @param folder of the maker's own recipes */
    public Chocolates(Path folder) {
        this.folder = folder;
    }

    public List<KnownRecipe> known() {
        return Recipes.load(folder).known();
    }

    /** Files that cannot be used, and what else is to be known. */
    public List<String> remarks() {
        Recipes recipes = Recipes.load(folder);
        List<String> all = new ArrayList<>();
        recipes.problems().forEach(problem -> all.add(problem.toString()));
        all.addAll(recipes.remarks());
        return all;
    }

    /** The text to begin an own copy with: that of an own recipe as it is, that of a built-in one under a free id. */
    public String copy(KnownRecipe known) {
        if (known.from() == KnownRecipe.From.OWN) return known.text();
        String id = free("my-" + known.recipe().id());
        return known.text()
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.matches("id *=.*") ? "id = " + id : line)
                .map(line -> line.matches("name *=.*") ? SetupText.MY_OWN.say(line) : line)
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private String free(String wished) {
        List<String> taken = known().stream().map(known -> known.recipe().id()).toList();
        String id = wished;
        for (int number = 2; taken.contains(id); number++) id = wished + "-" + number;
        return id;
    }

    /** What is wrong with this text; nothing where it may be kept. */
    public List<String> check(String text) {
        return parse(text)
                .fold(
                        recipe -> List.of(),
                        problems -> problems.stream().map(Problem::toString).toList());
    }

    private Parsed<Recipe> parse(String text) {
        return RecipeText.parse(SetupText.THIS_RECIPE.say(), text)
                .fold(
                        recipe -> {
                            boolean builtIn =
                                    Recipes.load(folder).builtIn(recipe.id()).isPresent();
                            return builtIn
                                    ? Parsed.refused(
                                            SetupText.THIS_RECIPE.say(),
                                            SetupText.THE_ID_IS_THAT_OF_A.say(recipe.id()),
                                            SetupText.GIVE_YOUR_OWN_ANOTHER_ID_FOR.say(recipe.id()))
                                    : Parsed.accepted(recipe);
                        },
                        Parsed::refused);
    }

    /**
     * Keeps a text as an own recipe; one of the same id that was kept before stays beside it under another name.
     *
     * @return its id
     */
    public Parsed<String> keep(String text) {
        return parse(text).fold(recipe -> write(recipe.id(), text), Parsed::refused);
    }

    private Parsed<String> write(String id, String text) {
        // The same chocolate may lie in a file of another name; that one is the one to change.
        Path file = known().stream()
                .filter(known -> known.from() == KnownRecipe.From.OWN
                        && known.recipe().id().equals(id))
                .map(known -> Path.of(known.place()))
                .findFirst()
                .orElse(Recipes.place(folder, id));
        try {
            if (Files.exists(file) && !Files.readString(file).equals(text))
                Files.copy(file, KeptFiles.free(file, ".before"));
            KeptFiles.replace(file, text);
            return Parsed.accepted(id);
        } catch (IOException e) {
            return Parsed.refused(
                    file.toString(),
                    SetupText.IT_CANNOT_BE_KEPT.say(e.getMessage()),
                    SetupText.CHECK_THAT_YOU_MAY_WRITE_IN.say());
        }
    }

    /** The text of targets worked out from a composition; what the rule cannot carry stands above it. */
    public Parsed<String> from(String id, Ingredients ingredients) {
        return CompositionTargets.of(id, ingredients).fold(Chocolates::written, Parsed::refused);
    }

    private static Parsed<String> written(WorkedTargets worked) {
        String warnings =
                worked.warnings().stream().map(warning -> "# " + warning + "\n").collect(Collectors.joining());
        return Parsed.accepted(warnings + RecipeText.write(worked.recipe()));
    }

    /** Where the source of a value stands in a recipe's text; empty where none is given. */
    public static Optional<String> source(Recipe recipe, String key) {
        return recipe.sources().stream()
                .filter(source -> source.key().equals(key))
                .map(source -> source.text())
                .findFirst();
    }
}
