package fifthform.monitor.catalogue;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.monitor.catalogue.KnownRecipe.From;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All chocolates the program knows; the maker's own win over built-in ones of the same id. */
public final class Recipes {
    /** Ending of recipe files. */
    public static final String ENDING = ".recipe";

    private final Map<String, KnownRecipe> byId = new TreeMap<>();
    private final Map<String, KnownRecipe> builtIn = new TreeMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    private Recipes() {}

    /**
     * Loads the built-in recipes and those in {@code ownFolder}, which need not exist. A file that cannot be used is a
     * problem to be shown, never an exception: one slip must not take the other chocolates away.
     */
    public static Recipes load(Path ownFolder) {
        Recipes recipes = new Recipes();
        recipes.addBuiltIn();
        recipes.addOwn(ownFolder);
        return recipes;
    }

    /** All that can be used, by id. */
    public List<KnownRecipe> known() {
        return List.copyOf(byId.values());
    }

    /** The built-in one of this id, also where an own recipe stands in for it. */
    public Optional<KnownRecipe> builtIn(String id) {
        return Optional.ofNullable(builtIn.get(id));
    }

    /** Files that could not be used, and why. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** What the maker should know though nothing is wrong, for example that an own recipe stands in for a built-in one. */
    public List<String> remarks() {
        return List.copyOf(remarks);
    }

    /** The recipe with this id, or in the file at this path. */
    public Parsed<KnownRecipe> find(String idOrPath) {
        Optional<KnownRecipe> known = Optional.ofNullable(byId.get(idOrPath));
        if (known.isPresent()) return Parsed.accepted(known.get());
        return namesFile(idOrPath) ? atPath(idOrPath) : unknown(idOrPath);
    }

    /** Whether this is taken for a file's path where no chocolate has it as its id. */
    public static boolean namesFile(String idOrPath) {
        return idOrPath.contains("/") || idOrPath.contains("\\") || idOrPath.endsWith(ENDING);
    }

    /** Reads one file, for {@link #find} and for checking a recipe that is still being written. */
    public static Parsed<KnownRecipe> read(Path file) {
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        try {
            String text = Files.readString(file);
            return RecipeText.parse(name, text)
                    .fold(
                            recipe -> Parsed.accepted(new KnownRecipe(recipe, text, From.OWN, file.toString())),
                            Parsed::refused);
        } catch (NoSuchFileException e) {
            return Parsed.refused(file.toString(), FileText.THERE_IS_NO_SUCH_FILE.say(), FileText.CHECK_THE_PATH.say());
        } catch (MalformedInputException e) {
            return Parsed.refused(
                    name, FileText.THE_FILE_IS_NOT_TEXT_IN.say(), FileText.SAVE_IT_AS_PLAIN_TEXT_WITH.say());
        } catch (IOException e) {
            return Parsed.refused(
                    file.toString(),
                    FileText.THE_FILE_CANNOT_BE_READ.say(e.getMessage()),
                    FileText.CHECK_THAT_IT_IS_A_TEXT.say());
        }
    }

    /** Where the maker's own recipe of this id is kept. */
    public static Path place(Path ownFolder, String id) {
        return ownFolder.resolve(id + ENDING);
    }

    /**
     * Writes a recipe of the maker's own; nothing is overwritten.
     *
     * @param ownFolder made where there is none
     * @return its file
     * @throws FileAlreadyExistsException there is one of this id
     * @throws IOException it cannot be written
     */
    public static Path add(Path ownFolder, String id, String text) throws IOException {
        Files.createDirectories(ownFolder);
        return Files.writeString(place(ownFolder, id), text, StandardOpenOption.CREATE_NEW);
    }

    private void addBuiltIn() {
        try {
            BuiltInRecipes.texts()
                    .forEach((name, text) -> RecipeText.parse(name, text)
                            .fold(
                                    recipe ->
                                            keep(new KnownRecipe(recipe, text, From.BUILT_IN, FileText.BUILT_IN.say())),
                                    problems::addAll));
        } catch (IOException e) {
            problems.add(new Problem(
                    FileText.BUILT_IN_RECIPES.say(),
                    FileText.THEY_CANNOT_BE_READ_ONLY_YOUR.say(e.getMessage()),
                    FileText.BUILD_OR_INSTALL_THE_PROGRAM.say()));
        }
    }

    private void addOwn(Path folder) {
        if (!Files.isDirectory(folder)) return;
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .forEach(file -> read(file).fold(this::keepOwn, problems::addAll));
        } catch (IOException e) {
            problems.add(new Problem(
                    folder.toString(),
                    FileText.YOUR_OWN_RECIPES_CANNOT_BE.say(e.getMessage()),
                    FileText.CHECK_THAT_YOU_MAY_READ_THIS.say()));
        }
    }

    private boolean keepOwn(KnownRecipe own) {
        Optional<KnownRecipe> before = Optional.ofNullable(byId.get(own.recipe().id()));
        if (before.isPresent() && before.get().from() == From.OWN) {
            return problems.add(new Problem(
                    own.place(),
                    FileText.ITS_ID_IS_THAT_OF_TOO.say(
                            own.recipe().id(), before.get().place()),
                    FileText.GIVE_ONE_OF_THE_TWO_ANOTHER.say()));
        }
        before.ifPresent(builtIn ->
                remarks.add(FileText.IS_YOUR_OWN_RECIPE_AND_NOT.say(own.recipe().id(), own.place())));
        return keep(own);
    }

    private boolean keep(KnownRecipe recipe) {
        byId.put(recipe.recipe().id(), recipe);
        if (recipe.from() == From.BUILT_IN) builtIn.put(recipe.recipe().id(), recipe);
        return true;
    }

    private static Parsed<KnownRecipe> atPath(String path) {
        try {
            return read(Path.of(path));
        } catch (InvalidPathException e) {
            return Parsed.refused(path, FileText.THIS_IS_NO_PATH_OF_A.say(), FileText.CHECK_THE_PATH_OR_NAME_A.say());
        }
    }

    private Parsed<KnownRecipe> unknown(String id) {
        Collection<String> ids =
                known().stream().map(KnownRecipe::recipe).map(Recipe::id).toList();
        return Parsed.refused(
                FileText.CHOCOLATE.say(),
                FileText.IS_NOT_A_CHOCOLATE_I_KNOW.say(id),
                FileText.KNOWN_A_RECIPE_FILE_IS_NAMED.say(DidYouMean.oneOf(ids, id), String.join(", ", ids)));
    }
}
