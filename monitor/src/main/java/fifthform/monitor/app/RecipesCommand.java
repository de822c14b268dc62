package fifthform.monitor.app;

import fifthform.curves.recipe.CompositionTargets;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Units;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The chocolates that are known. */
@Command(
        name = "recipes",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Lists the chocolates known, with their targets.",
        footer = {"", "Examples:", "  monitor/run recipes", "  monitor/run recipes show dark"})
final class RecipesCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--json", description = "answer as JSON lines")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        Recipes recipes = Recipes.load(common.folders().recipes());
        PrintWriter err = spec.commandLine().getErr();
        recipes.remarks().forEach(err::println);
        recipes.problems().forEach(p -> err.println("Passed over: " + p));
        Units units = common.units().orElse(Units.CELSIUS);
        PrintWriter out = spec.commandLine().getOut();
        for (KnownRecipe known : recipes.known()) out.println(json ? line(known) : row(known, units));
        return (recipes.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    private static String row(KnownRecipe known, Units units) {
        Recipe r = known.recipe();
        Phrases words = new Phrases(units, r);
        return String.format(
                "%-20s %-42s melt %-14s cool %-14s work %-16s melt-out %s  (%s)",
                r.id(),
                r.name(),
                words.range(r.melt().range()),
                words.range(r.cool().range()),
                words.range(r.work().range()),
                units.withUnit(r.meltOut().limitCelsius()),
                known.from().word());
    }

    private static String line(KnownRecipe known) {
        Recipe r = known.recipe();
        return new JsonLine()
                .text("id", r.id())
                .text("name", r.name())
                .text("from", known.from().word())
                .number("melt_low_c", r.melt().range().lowCelsius())
                .number("melt_high_c", r.melt().range().highCelsius())
                .number("cool_low_c", r.cool().range().lowCelsius())
                .number("cool_high_c", r.cool().range().highCelsius())
                .number("work_low_c", r.work().range().lowCelsius())
                .number("work_high_c", r.work().range().highCelsius())
                .number("warn_c", r.meltOut().warnCelsius())
                .number("melt_out_c", r.meltOut().limitCelsius())
                .text("basis", r.basis())
                .end();
    }

    @Command(
            name = "show",
            mixinStandardHelpOptions = true,
            description = "Prints a recipe with the source of each value, in the form of a recipe file.",
            footer = {"", "Example: monitor/run recipes show dark > my-dark.recipe"})
    int show(@Parameters(paramLabel = "ID") String id) throws Refusal {
        Recipes recipes = Recipes.load(common.folders().recipes());
        KnownRecipe known = Chocolates.find(id, recipes);
        spec.commandLine().getOut().print(known.text());
        spec.commandLine().getOut().flush();
        return Exit.DONE.code();
    }

    @Command(
            name = "check",
            mixinStandardHelpOptions = true,
            description = "Checks a recipe file and lists everything that is wrong with it.",
            footer = {"", "Example: monitor/run recipes check my-dark.recipe"})
    int check(@Parameters(paramLabel = "FILE") Path file) {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        return Recipes.read(file)
                .fold(
                        known -> {
                            out.println(file + ": " + known.recipe().name() + " is a good recipe.");
                            return Exit.DONE.code();
                        },
                        problems -> {
                            problems.forEach(err::println);
                            boolean unreadable =
                                    !java.nio.file.Files.isRegularFile(file) || !java.nio.file.Files.isReadable(file);
                            return (unreadable ? Exit.FILE : Exit.ANSWER_IS_NO).code();
                        });
    }

    @Command(
            name = "from",
            mixinStandardHelpOptions = true,
            description = "Works targets out from a composition, in %% of mass.",
            footer = {"", "Example: monitor/run recipes from --cocoa-butter 38 --milk-fat 0 --sugar 30"})
    int from(
            @Option(names = "--cocoa-butter", required = true, paramLabel = "PERCENT") double cocoaButterPercent,
            @Option(names = "--milk-fat", defaultValue = "0", paramLabel = "PERCENT") double milkFatPercent,
            @Option(names = "--sugar", defaultValue = "0", paramLabel = "PERCENT") double sugarPercent)
            throws Refusal {
        Recipe recipe = Answers.orRefuse(
                CompositionTargets.fromPercent("own", cocoaButterPercent, milkFatPercent, sugarPercent),
                Exit.NOT_UNDERSTOOD);
        spec.commandLine().getOut().print(RecipeText.write(recipe));
        spec.commandLine().getOut().flush();
        return Exit.DONE.code();
    }
}
