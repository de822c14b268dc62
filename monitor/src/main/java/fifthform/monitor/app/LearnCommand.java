package fifthform.monitor.app;

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
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.LearnText;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the batches together say of each chocolate. */
@Command(name = "learn", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LearnCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Option(names = "--chocolate", paramLabel = "ID")
    private String chocolate;

    @Option(names = "--practice")
    private boolean practice;

    @Option(names = "--sessions", paramLabel = "DIR")
    private Path sessions;

    @Option(names = "--write", paramLabel = "ID")
    private String write;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() throws Refusal {
        Folders folders = common.folders();
        if (write != null) checkWrite(folders);
        Path folder = sessions == null ? folders.sessions() : sessions;
        if (sessions != null && !Files.isDirectory(folder)) {
            throw new Refusal(Exit.FILE, LearnText.IS_NO_FOLDER_NOTHING_WAS.say(folder));
        }
        Recipes recipes = Recipes.load(folders.recipes());
        recipes.problems().forEach(p -> common.err().println(LearnText.PASSED_OVER.say(p)));
        LookedSessions looked = looked(folder, recipes);
        looked.problems().forEach(common.err()::println);
        checkChocolate(looked, recipes);
        List<LearnedChocolate> learned = looked.chocolates().stream()
                .filter(c -> chocolate == null || c.id().equals(baseOf(chocolate, recipes)))
                .toList();
        if (learned.isEmpty()) return nothing(folders, looked);
        if (write != null) return write(folders, learned.get(0));
        LearnWords words = new LearnWords(common.units());
        for (LearnedChocolate each : learned) {
            if (json) common.out().println(LearnWords.json(each, practice));
            else words.lines(each, practice).forEach(common.out()::println);
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
            throw new Refusal(Exit.FILE, LearnText.CANNOT_BE_READ_NOTHING_WAS.say(folder));
        }
    }

    private static int exit(LookedSessions looked) {
        return (looked.problems().isEmpty() ? Exit.DONE : Exit.ANSWER_IS_NO).code();
    }

    /** Own bowls are of no chocolate; practice has none that are kept. */
    private void bowls(Folders folders) throws Refusal {
        Bowls.Loaded bowls = new Bowls(folders.bowls()).load();
        bowls.problems().forEach(common.err()::println);
        if (json) {
            BowlFigures.json(bowls.bowls()).forEach(common.out()::println);
            return;
        }
        List<String> lines = new BowlFigures(common.units()).lines(bowls.bowls());
        if (lines.isEmpty()) return;
        common.out().println(LearnText.YOUR_BOWLS.say());
        lines.forEach(common.out()::println);
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
                LearnText.CHOCOLATE_WAS_AND_NO_RECIPE.say(LookWords.plain(chocolate), String.join(", ", known)));
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
        String which = practice ? LearnText.PRACTICE_BARS.say() : LearnText.BARS_OF_ONES_OWN.say();
        String of = chocolate == null ? "" : LearnText.OF.say(LookWords.plain(chocolate));
        if (write != null) {
            throw new Refusal(Exit.ANSWER_IS_NO, LearnText.NO_LOOKS_AT_ARE_KEPT_NOTHING.say(which, of));
        }
        if (!json) {
            common.out().println(LearnText.TOO_FEW_BATCHES_NO_LOOKS_AT.say(which, of));
            if (chocolate != null && !looked.chocolates().isEmpty())
                common.out()
                        .println(LearnText.LOOKED_AT_SO_FAR.say(looked.chocolates().stream()
                                .map(LearnedChocolate::id)
                                .collect(Collectors.joining(", "))));
            if (looked.others() > 0)
                common.out()
                        .println((practice ? LearnText.REAL_KEPT_APART : LearnText.PRACTICE_KEPT_APART)
                                .say(looked.others()));
        }
        if (!practice) bowls(folders);
        return exit(looked);
    }

    private void checkWrite(Folders folders) throws Refusal {
        if (chocolate == null) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, LearnText.WRITE_WAS_GIVEN_WITHOUT.say());
        }
        if (practice) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, LearnText.WRITE_WAS_GIVEN_WITH_PRACTICE.say());
        }
        if (!write.matches("[a-z0-9][a-z0-9-]{0,59}")) {
            throw new Refusal(Exit.NOT_UNDERSTOOD, LearnText.WRITE_WAS_NOTHING_WAS_WRITTEN.say(LookWords.plain(write)));
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
            Recipes.add(folders.recipes(), write, text);
        } catch (FileAlreadyExistsException e) {
            throw exists(file);
        } catch (IOException e) {
            throw new Refusal(Exit.FILE, LearnText.CANNOT_BE_WRITTEN_THE_LIMITS.say(file, e.getMessage()));
        }
        new LearnWords(common.units())
                .written(learned, own, file)
                .forEach((json ? common.err() : common.out())::println);
        if (json) common.out().println(LearnWords.json(learned, practice));
        return Exit.DONE.code();
    }

    private Path file(Folders folders) {
        return Recipes.place(folders.recipes(), write);
    }

    private static Refusal exists(Path file) {
        return new Refusal(Exit.FILE, LearnText.IS_THERE_ALREADY_AND_NO_RECIPE.say(file));
    }
}
