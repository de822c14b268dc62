package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.TargetSense;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Folders;
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
        subcommands = RecipesFromCommand.class,
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
            description =
                    "Prints a recipe with the source of each value, in the form of a recipe file; below it, as remarks,"
                            + " what published tables print.",
            footer = {
                "",
                "Examples:",
                "  monitor/run recipes show dark > my-dark.recipe",
                "  monitor/run recipes show milk --why"
            })
    int show(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--why", description = "the rule behind targets of such a composition too") boolean why,
            @Option(names = "--json", description = "answer as JSON lines") boolean lines)
            throws Refusal {
        Recipes recipes = Recipes.load(common.folders().recipes());
        KnownRecipe known = Chocolates.find(id, recipes);
        PrintWriter out = spec.commandLine().getOut();
        TargetLines targets = new TargetLines(known.recipe());
        if (lines) {
            out.println(line(known));
            targets.json().forEach(out::println);
        } else {
            out.print(known.text());
            targets.remarks(why).forEach(out::println);
        }
        out.flush();
        return Exit.DONE.code();
    }

    @Command(
            name = "check",
            mixinStandardHelpOptions = true,
            description =
                    "Checks a recipe file: lists everything that is wrong with it, and targets unlike all that is printed.",
            footer = {"", "Example: monitor/run recipes check my-dark.recipe"})
    int check(@Parameters(paramLabel = "FILE") Path file) {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        return Recipes.read(file)
                .fold(
                        known -> {
                            out.println(file + ": " + known.recipe().name() + " is a good recipe.");
                            TargetSense.remarks(known.recipe()).forEach(remark -> err.println("Mind: " + remark));
                            return Exit.DONE.code();
                        },
                        problems -> {
                            problems.forEach(err::println);
                            boolean unreadable =
                                    !java.nio.file.Files.isRegularFile(file) || !java.nio.file.Files.isReadable(file);
                            return (unreadable ? Exit.FILE : Exit.ANSWER_IS_NO).code();
                        });
    }

    Folders folders() {
        return common.folders();
    }
}
