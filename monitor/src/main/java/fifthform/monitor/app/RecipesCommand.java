package fifthform.monitor.app;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.TargetSense;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.model.Phrases;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.CommandText;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The chocolates that are known. */
@Command(
        name = "recipes",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = RecipesFromCommand.class)
final class RecipesCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        Recipes recipes = Recipes.load(common.folders().recipes());
        PrintWriter err = common.err();
        recipes.remarks().forEach(err::println);
        recipes.problems().forEach(p -> err.println(CommandText.PASSED_OVER.say(p)));
        Units units = common.units();
        PrintWriter out = common.out();
        for (KnownRecipe known : recipes.known()) out.println(json ? line(known) : row(known, units));
        return (recipes.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    private static String row(KnownRecipe known, Units units) {
        Recipe r = known.recipe();
        Phrases words = new Phrases(units, r);
        return CommandText.RECIPE_ROW.say(
                wide(20, r.id()),
                wide(42, r.name()),
                wide(14, words.range(r.melt().range())),
                wide(14, words.range(r.cool().range())),
                wide(16, words.range(r.work().range())),
                units.withUnit(r.meltOut().limitCelsius()),
                known.from() == KnownRecipe.From.BUILT_IN
                        ? CommandText.RECIPE_BUILT_IN.say()
                        : CommandText.RECIPE_OWN.say());
    }

    private static String wide(int letters, String words) {
        return String.format("%-" + letters + "s", words);
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

    @Command(name = "show", mixinStandardHelpOptions = true)
    int show(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--why") boolean why,
            @Option(names = "--json") boolean lines)
            throws Refusal {
        Recipes recipes = Recipes.load(common.folders().recipes());
        KnownRecipe known = Chocolates.find(id, recipes);
        PrintWriter out = common.out();
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

    @Command(name = "check", mixinStandardHelpOptions = true)
    int check(@Parameters(paramLabel = "FILE") Path file) {
        PrintWriter out = common.out();
        PrintWriter err = common.err();
        return Recipes.read(file)
                .fold(
                        known -> {
                            out.println(CommandText.IS_A_GOOD_RECIPE.say(
                                    file, known.recipe().name()));
                            TargetSense.remarks(known.recipe())
                                    .forEach(remark -> err.println(CommandText.MIND.say(remark)));
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
