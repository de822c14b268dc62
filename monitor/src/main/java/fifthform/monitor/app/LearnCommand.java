package fifthform.monitor.app;

import fifthform.curves.contrast.Comparison;
import fifthform.curves.learning.OwnRecipe;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.monitor.bowls.Bowls;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.learned.BowlFigures;
import fifthform.monitor.learned.LearnedChocolate;
import fifthform.monitor.learned.LookedSessions;
import fifthform.monitor.learned.ReadBefore;
import fifthform.monitor.looks.LookWords;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.SettingsFile;
import fifthform.monitor.settings.Units;
import fifthform.monitor.store.StoreException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the batches together say of each chocolate. */
@Command(
        name = "learn",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Says what your looks at the bars tell: from which overshoot on, in your kitchen and by your probe, the temper"
                    + " was lost; what differs between batches whose bars were marked and those whose were fine; one"
                    + " thing to try in the next batch; and what your bowls taught.",
            "What differs goes with marks and need not cause them. Below "
                    + Comparison.LEAST_EACH + " marked and " + Comparison.LEAST_EACH
                    + " fine batches nothing is said of"
                    + " it. Practice and batches of others are kept apart, and so is each chocolate.",
            "It changes no alarm. Only --write makes a recipe of your own with the limit."
        },
        footer = {
            "",
            "Examples:",
            "  monitor/run learn",
            "  monitor/run learn --chocolate dark --json",
            "  monitor/run learn --chocolate dark --write my-dark"
        })
final class LearnCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--chocolate", paramLabel = "ID", description = "this chocolate only")
    private String chocolate;

    @Option(names = "--practice", description = "of practice batches, which are kept apart, instead of real ones")
    private boolean practice;

    @Option(names = "--sessions", paramLabel = "DIR", description = "of sessions in another folder")
    private Path sessions;

    @Option(
            names = "--write",
            paramLabel = "ID",
            description = "write a recipe with the limit learned into your recipes folder, under this id")
    private String write;

    @Option(names = "--json", description = "answer as JSON lines, one a chocolate and one a bowl")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal {
        Folders folders = common.folders();
        if (write != null) checkWrite(folders);
        Path folder = sessions == null ? folders.sessions() : sessions;
        if (sessions != null && !Files.isDirectory(folder)) {
            throw new Refusal(Exit.FILE, folder + " is no folder. Nothing was learned. Name one with sessions in it.");
        }
        Recipes recipes = Recipes.load(folders.recipes());
        recipes.problems().forEach(p -> err().println("Passed over: " + p));
        LookedSessions looked = looked(folder, recipes);
        looked.problems().forEach(err()::println);
        checkChocolate(looked, recipes);
        List<LearnedChocolate> learned = looked.chocolates().stream()
                .filter(c -> chocolate == null || c.id().equals(baseOf(chocolate, recipes)))
                .toList();
        if (learned.isEmpty()) return nothing(folders, looked);
        if (write != null) return write(folders, learned.get(0));
        LearnWords words = new LearnWords(units(folders));
        for (LearnedChocolate each : learned) {
            if (json) out().println(LearnWords.json(each, practice));
            else words.lines(each, practice).forEach(out()::println);
        }
        if (!practice) bowls(folders);
        return exit(looked);
    }

    private LookedSessions looked(Path folder, Recipes recipes) throws Refusal {
        try {
            return LookedSessions.in(
                    folder,
                    practice ? LookedSessions.Of.PRACTICE : LookedSessions.Of.REAL,
                    recipes,
                    // What lies elsewhere may bear the same names.
                    sessions == null ? ReadBefore.in(common.folders().learnedIndex()) : ReadBefore.nothing());
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, folder + " cannot be read. Nothing was learned. Check that you may read it.");
        }
    }

    private static int exit(LookedSessions looked) {
        return (looked.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    /** Own bowls are of no chocolate; practice has none that are kept. */
    private void bowls(Folders folders) throws Refusal {
        Bowls.Loaded bowls = new Bowls(folders.bowls()).load();
        bowls.problems().forEach(err()::println);
        if (json) {
            BowlFigures.json(bowls.bowls()).forEach(out()::println);
            return;
        }
        List<String> lines = new BowlFigures(units(folders)).lines(bowls.bowls());
        if (lines.isEmpty()) return;
        out().println("Your bowls:");
        lines.forEach(out()::println);
    }

    /** A slip in the name must not read like a chocolate that nobody looked at. */
    private void checkChocolate(LookedSessions looked, Recipes recipes) throws Refusal {
        if (chocolate == null) return;
        Set<String> known = new TreeSet<>();
        recipes.known().forEach(recipe -> known.add(recipe.recipe().id()));
        looked.chocolates().forEach(each -> known.add(each.id()));
        if (known.contains(chocolate)) return;
        throw new Refusal(
                Exit.NOT_UNDERSTOOD,
                "--chocolate was \"" + LookWords.plain(chocolate)
                        + "\", and no recipe and no batch that was looked at has that id. Nothing was learned. Say one of: "
                        + String.join(", ", known) + ".");
    }

    /** An own limit belongs to the chocolate whose batches gave it. */
    private static String baseOf(String id, Recipes recipes) {
        return recipes.known().stream()
                .map(known -> known.recipe())
                .filter(recipe -> recipe.id().equals(id))
                .findFirst()
                .flatMap(OwnRecipe::baseOf)
                .orElse(id);
    }

    private int nothing(Folders folders, LookedSessions looked) throws Refusal {
        String which = practice ? "practice bars" : "bars";
        String of = chocolate == null ? "" : " of " + LookWords.plain(chocolate);
        if (write != null) {
            throw new Refusal(
                    Exit.ANSWER_IS_NO,
                    "No looks at " + which + of + " are kept. Nothing was written. Look at your bars first:"
                            + " monitor/run look last");
        }
        if (!json) {
            out().println("Too few batches: no looks at " + which + of
                    + " are kept yet. A day after a batch, and after 7 days: monitor/run look last");
            if (chocolate != null && !looked.chocolates().isEmpty())
                out().println("Looked at so far: "
                        + looked.chocolates().stream().map(LearnedChocolate::id).collect(Collectors.joining(", "))
                        + ".");
            if (looked.others() > 0)
                out().println(looked.others() + (practice ? " real" : " practice or recorded")
                        + (looked.others() == 1 ? " session with looks is" : " sessions with looks are") + " kept apart"
                        + (practice ? "." : "; monitor/run learn --practice shows them."));
        }
        if (!practice) bowls(folders);
        return exit(looked);
    }

    private void checkWrite(Folders folders) throws Refusal {
        if (chocolate == null) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--write was given without --chocolate. Nothing was written. Say of which chocolate, for example:"
                            + " monitor/run learn --chocolate dark --write my-dark");
        }
        if (practice) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--write was given with --practice. Nothing was written. Simulated bowls teach no limit of a real"
                            + " kitchen: leave --practice out.");
        }
        if (!write.matches("[a-z0-9][a-z0-9-]{0,59}")) {
            throw new Refusal(
                    Exit.NOT_UNDERSTOOD,
                    "--write was \"" + LookWords.plain(write)
                            + "\". Nothing was written. Use lower-case letters, digits and hyphens, for example: my-dark");
        }
        Path file = file(folders);
        if (Files.exists(file)) throw exists(file);
    }

    private int write(Folders folders, LearnedChocolate learned) throws Refusal {
        Recipe own = Answers.orRefuse(
                OwnRecipe.of(learned.published(), learned.limit(), write, LocalDate.now()), Exit.ANSWER_IS_NO);
        String text = RecipeText.write(own);
        // It must be one that can be read again, by the same rules as every recipe.
        Answers.orRefuse(RecipeText.parse(write + Recipes.ENDING, text), Exit.ANSWER_IS_NO);
        Path file = file(folders);
        try {
            Files.createDirectories(folders.recipes());
            Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw exists(file);
        } catch (IOException e) {
            throw new Refusal(
                    Exit.FILE,
                    file + " cannot be written (" + e.getMessage()
                            + "). The limits stay as they were. Check that you may write there.");
        }
        new LearnWords(units(folders)).written(learned, own, file).forEach((json ? err() : out())::println);
        if (json) out().println(LearnWords.json(learned, practice));
        return Exit.DONE.code();
    }

    private Path file(Folders folders) {
        return folders.recipes().resolve(write + Recipes.ENDING);
    }

    private static Refusal exists(Path file) {
        return new Refusal(
                Exit.FILE,
                file + " is there already, and no recipe is overwritten. Nothing was written."
                        + " Give another id, or move that file away.");
    }

    private Units units(Folders folders) throws Refusal {
        Optional<Units> asked = common.units();
        return asked.orElseGet(
                () -> new SettingsFile(folders.settingsFile()).load().settings().units());
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
