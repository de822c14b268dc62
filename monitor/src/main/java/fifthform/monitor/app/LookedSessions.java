package fifthform.monitor.app;

import fifthform.curves.check.Problem;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.learning.Judged;
import fifthform.curves.learning.LeftOut;
import fifthform.curves.learning.Outcome;
import fifthform.curves.learning.OwnRecipe;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.BatchHeat;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.StoreException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The sessions of a folder whose bars were looked at, real ones or practice and never both, by their chocolate. */
final class LookedSessions {
    /** Which sessions. */
    enum Of {
        REAL,
        /** Simulated, or from recorded bytes: no batch of their own. */
        PRACTICE
    }

    private final Of of;
    private final Recipes recipes;
    private final PrintWriter err;
    private final Map<String, Recipe> published = new TreeMap<>();
    private final Map<String, List<LearnedChocolate.Batch>> batches = new TreeMap<>();
    private int others;
    private Exit exit = Exit.DONE;

    private LookedSessions(Of of, Recipes recipes, PrintWriter err) {
        this.of = of;
        this.recipes = recipes;
        this.err = err;
    }

    /** Goes through a folder; what cannot be read is said on {@code err} and the rest counts. */
    static LookedSessions in(Path folder, Of of, Recipes recipes, PrintWriter err) throws Refusal {
        LookedSessions looked = new LookedSessions(of, recipes, err);
        try {
            List<Path> files = new SessionFiles(folder)
                    .all().stream()
                            .filter(file -> Files.exists(LookFile.place(file)))
                            .toList();
            for (Path file : files) looked.take(file);
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, folder + " cannot be read. Nothing was learned. Check that you may read it.");
        }
        return looked;
    }

    /** What each chocolate's batches say, by its id. */
    List<LearnedChocolate> chocolates() {
        List<LearnedChocolate> all = new ArrayList<>();
        batches.forEach((id, list) -> {
            List<LearnedChocolate.Batch> inOrder = list.stream()
                    .sorted(Comparator.comparing(LearnedChocolate.Batch::start))
                    .toList();
            Recipe recipe = published.get(id);
            double inForce = known(id).orElse(recipe).meltOut().limitCelsius();
            all.add(LearnedChocolate.of(recipe, inForce, inOrder));
        });
        return all;
    }

    /** Sessions with looks that were passed over because they are of the other kind. */
    int others() {
        return others;
    }

    /** Whether all could be read. */
    Exit exit() {
        return exit;
    }

    private void take(Path file) {
        Optional<Session> read = JournalReader.read(file).fold(Optional::of, problems -> {
            damaged(problems);
            return Optional.empty();
        });
        if (read.isEmpty()) return;
        Session session = read.get();
        if (kind(session.header().setup()) != of) {
            others++;
            return;
        }
        damaged(session.problems());
        LookFile.Loaded looks =
                LookFile.beside(file, session.header().session()).load();
        damaged(looks.problems());
        if (looks.looks().isEmpty()) return;
        BatchHeat heat = BatchHeat.of(session, recipe -> HeatScale.of(publishedOf(recipe)));
        Judged judged = Outcome.of(looks.seen());
        Optional<LeftOut> leftOut = heat.leftOut().or(judged::leftOut);
        Recipe recipe = publishedOf(heat.recipe());
        published.putIfAbsent(recipe.id(), recipe);
        batches.computeIfAbsent(recipe.id(), id -> new ArrayList<>())
                .add(new LearnedChocolate.Batch(
                        session.header().session(), session.header().start(), heat.dose(), judged.outcome(), leftOut));
    }

    private void damaged(List<Problem> problems) {
        problems.forEach(err::println);
        if (!problems.isEmpty()) exit = Exit.ANSWER_IS_NO;
    }

    /** Recorded bytes are somebody's batch a second time. */
    private static Of kind(Setup setup) {
        boolean real =
                setup.origin() == Origin.REAL && !setup.bowlProbe().place().startsWith(TapeProbe.PLACE);
        return real ? Of.REAL : Of.PRACTICE;
    }

    /**
     * The recipe whose limit an own one is held against: the built-in one of this chocolate, else the maker's, else the one
     * that the session was recorded with. All batches of a chocolate are counted by this one.
     */
    private Recipe publishedOf(Recipe recipe) {
        String id = OwnRecipe.baseOf(recipe).orElse(recipe.id());
        Optional<Recipe> before = Optional.ofNullable(published.get(id));
        return before.or(() -> recipes.builtIn(id).map(KnownRecipe::recipe))
                .or(() -> known(id))
                .orElse(recipe.id().equals(id) ? recipe : published.getOrDefault(id, recipe));
    }

    private Optional<Recipe> known(String id) {
        return recipes.known().stream()
                .map(KnownRecipe::recipe)
                .filter(recipe -> recipe.id().equals(id))
                .findFirst();
    }
}
