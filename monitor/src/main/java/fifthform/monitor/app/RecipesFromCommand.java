package fifthform.monitor.app;

import fifthform.curves.recipe.CompositionTargets;
import fifthform.curves.recipe.Ingredients;
import fifthform.curves.recipe.OtherFat;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.recipe.WorkedTargets;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.texts.CommandText;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Targets from a composition. */
@Command(name = "from", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class RecipesFromCommand implements Callable<Integer> {
    private static final String USUAL_ID = "own";

    @ParentCommand
    private RecipesCommand recipes;

    @Option(names = "--cacao", paramLabel = "PERCENT")
    private double cacaoPercent;

    @Option(names = "--cacao-fat", paramLabel = "PERCENT")
    private double cacaoFatPercent = Ingredients.USUAL_CACAO_FAT_PERCENT;

    @Option(names = "--cocoa-butter", paramLabel = "PERCENT")
    private double cocoaButterPercent;

    @Option(names = "--milk-fat", paramLabel = "PERCENT")
    private double milkFatPercent;

    @Option(names = "--other-fat", paramLabel = "PERCENT")
    private double otherFatPercent;

    @Option(names = "--other-fat-kind", paramLabel = "KIND")
    private String otherFatKind;

    @Option(names = "--sugar", paramLabel = "PERCENT")
    private double sugarPercent;

    @Option(names = "--lecithin", paramLabel = "PERCENT")
    private double lecithinPercent;

    @Option(names = "--why")
    private boolean why;

    @Option(names = "--write", paramLabel = "ID")
    private String write;

    @Option(names = "--json")
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
        worked.warnings().forEach(warning -> err.println(CommandText.MIND.say(warning)));
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
        return Optional.of(OneOf.named("--other-fat-kind", otherFatKind, List.of(OtherFat.values()), OtherFat::word));
    }

    private void write(String text, PrintWriter err) throws Refusal {
        Path folder = recipes.folders().recipes();
        Path file = Recipes.place(folder, write);
        try {
            Recipes.add(folder, write, text);
            err.println(CommandText.WRITTEN_TO_TO_USE_IT_MONITOR.say(file, write));
        } catch (FileAlreadyExistsException e) {
            throw new Refusal(Exit.FILE, CommandText.IS_THERE_ALREADY_NOTHING_WAS.say(file));
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, CommandText.CANNOT_BE_WRITTEN_NOTHING_WAS.say(file, e.getMessage()));
        }
    }
}
