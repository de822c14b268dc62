package fifthform.monitor.app;

import fifthform.curves.recipe.CompositionTargets;
import fifthform.curves.recipe.Ingredients;
import fifthform.curves.recipe.OtherFat;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.recipe.WorkedTargets;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.settings.Folders;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Targets from a composition. */
@Command(
        name = "from",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Works targets out from a composition, in %% of mass, each with its source; prints a recipe file.",
            "What is missing to 100 %% is other solids."
        },
        footer = {
            "",
            "Examples:",
            "  monitor/run recipes from --cacao 70 --sugar 30",
            "  monitor/run recipes from --cocoa-butter 27 --milk-fat 5.5 --sugar 45 --lecithin 0.4 --why",
            "  monitor/run recipes from --cocoa-butter 30 --other-fat 2 --other-fat-kind soft --write gianduja"
        })
final class RecipesFromCommand implements Callable<Integer> {
    private static final String USUAL_ID = "own";

    @ParentCommand
    private RecipesCommand recipes;

    @Option(names = "--cacao", paramLabel = "PERCENT", description = "nibs or cocoa mass, with their own butter")
    private double cacaoPercent;

    @Option(names = "--cacao-fat", paramLabel = "PERCENT", description = "fat of these; 54 where not said")
    private double cacaoFatPercent = Ingredients.USUAL_CACAO_FAT_PERCENT;

    @Option(
            names = "--cocoa-butter",
            paramLabel = "PERCENT",
            description = "cocoa butter; with --cacao what is added to it")
    private double cocoaButterPercent;

    @Option(names = "--milk-fat", paramLabel = "PERCENT", description = "milk fat, a quarter of whole milk powder")
    private double milkFatPercent;

    @Option(names = "--other-fat", paramLabel = "PERCENT", description = "any other fat")
    private double otherFatPercent;

    @Option(
            names = "--other-fat-kind",
            paramLabel = "KIND",
            description = "like-butter (sets like it: shea, illipe), soft (nut and seed oils) or lauric (coconut, palm"
                    + " kernel)")
    private String otherFatKind;

    @Option(names = "--sugar", paramLabel = "PERCENT", description = "sugar; it moves no temperature")
    private double sugarPercent;

    @Option(names = "--lecithin", paramLabel = "PERCENT", description = "lecithin; it moves no temperature")
    private double lecithinPercent;

    @Option(names = "--why", description = "print the rule behind every target")
    private boolean why;

    @Option(
            names = "--write",
            paramLabel = "ID",
            description = "write it into your recipes folder under this id; nothing is overwritten")
    private String write;

    @Option(names = "--json", description = "answer as JSON lines, a target a line, in °C")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        Ingredients ingredients = new Ingredients(
                cacaoPercent,
                cacaoFatPercent,
                cocoaButterPercent,
                milkFatPercent,
                otherFatPercent,
                kind(),
                sugarPercent,
                lecithinPercent);
        WorkedTargets worked = Answers.orRefuse(
                CompositionTargets.of(write == null ? USUAL_ID : write, ingredients), Exit.NOT_UNDERSTOOD);
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        worked.warnings().forEach(warning -> err.println("Mind: " + warning));
        TargetLines lines = new TargetLines(worked);
        String text = RecipeText.write(worked.recipe())
                + String.join(System.lineSeparator(), lines.remarks(why))
                + System.lineSeparator();
        if (write != null) write(text, err);
        if (json) {
            lines.json().forEach(out::println);
            worked.warnings()
                    .forEach(warning ->
                            out.println(new JsonLine().text("warning", warning).end()));
        } else {
            out.print(text);
        }
        out.flush();
        return Exit.DONE.code();
    }

    private Optional<OtherFat> kind() throws Refusal {
        if (otherFatKind == null) return Optional.empty();
        Optional<OtherFat> kind = OtherFat.fromWord(otherFatKind.toLowerCase(Locale.ROOT));
        if (kind.isPresent()) return kind;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "--other-fat-kind was " + otherFatKind + ". Nothing was done. Say one of: "
                        + String.join(", ", OtherFat.words()) + ".");
    }

    private void write(String text, PrintWriter err) throws Refusal {
        Folders folders = recipes.folders();
        Path file = folders.recipes().resolve(write + Recipes.ENDING);
        try {
            Files.createDirectories(folders.recipes());
            Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
            err.println("Written to " + file + ". To use it: monitor/run watch --chocolate " + write);
        } catch (FileAlreadyExistsException e) {
            throw new Refusal(
                    Exit.FILE, file + " is there already. Nothing was written. Give another id with --write.");
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    file + " cannot be written (" + e.getMessage()
                            + "). Nothing was written. Check that you may write there.");
        }
    }
}
