package fifthform.monitor.learned;

import fifthform.curves.check.Problem;
import fifthform.curves.contrast.Bars;
import fifthform.curves.contrast.BatchTraits;
import fifthform.curves.contrast.Trait;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.learning.Judged;
import fifthform.curves.learning.LeftOut;
import fifthform.curves.learning.Outcome;
import fifthform.curves.learning.OwnRecipe;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setting.CoolingPlace;
import fifthform.curves.setting.SetRecord;
import fifthform.curves.setup.Setup;
import fifthform.monitor.analyse.BatchHeat;
import fifthform.monitor.bars.SetLog;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.notebook.BatchKind;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.Session;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.StoreException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The sessions of a folder whose bars were looked at, real ones or practice and never both, by their chocolate. */
public final class LookedSessions {
    /** Which sessions. */
    public enum Of {
        REAL,
        /** Simulated, or from recorded bytes: no batch of their own. */
        PRACTICE
    }

    private final Of of;
    private final Recipes recipes;
    private final Map<String, Path> taken = new TreeMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Recipe> published = new TreeMap<>();
    private final Map<String, List<LearnedChocolate.Batch>> batches = new TreeMap<>();
    private int others;

    private LookedSessions(Of of, Recipes recipes) {
        this.of = of;
        this.recipes = recipes;
    }

    /**
     * Goes through a folder; what cannot be read is kept among the {@link #problems} and the rest counts.
     *
     * @throws StoreException the folder cannot be listed
     */
    public static LookedSessions in(Path folder, Of of, Recipes recipes) throws StoreException {
        LookedSessions looked = new LookedSessions(of, recipes);
        List<Path> files = new SessionFiles(folder)
                .all().stream()
                        .filter(file -> Files.exists(LookFile.place(file)))
                        // Of a session and its copies the shortest name is the session's own.
                        .sorted(Comparator.comparingInt(
                                        (Path file) -> SessionFiles.name(file).length())
                                .thenComparing(Path::getFileName))
                        .toList();
        for (Path file : files) looked.take(file);
        return looked;
    }

    /** What each chocolate's batches say, by its id. */
    public List<LearnedChocolate> chocolates() {
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
    public int others() {
        return others;
    }

    /** What could not be read, and what counts once though it is there twice. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void take(Path file) {
        Optional<Session> read = JournalReader.read(file).fold(Optional::of, unreadable -> {
            problems.addAll(unreadable);
            return Optional.empty();
        });
        if (read.isEmpty()) return;
        Session session = read.get();
        if (kind(session.header().setup()) != of) {
            others++;
            return;
        }
        if (isThereTwice(session)) return;
        problems.addAll(session.problems());
        LookFile.Loaded looks =
                LookFile.beside(file, session.header().session()).load();
        problems.addAll(looks.problems());
        if (looks.looks().isEmpty()) return;
        BatchHeat heat = BatchHeat.of(session, recipe -> HeatScale.of(publishedOf(recipe)));
        Judged judged = Outcome.of(looks.seen());
        Optional<LeftOut> leftOut = heat.leftOut().or(judged::leftOut);
        Recipe recipe = publishedOf(heat.recipe());
        published.putIfAbsent(recipe.id(), recipe);
        batches.computeIfAbsent(recipe.id(), id -> new ArrayList<>())
                .add(new LearnedChocolate.Batch(
                        session.header().session(),
                        session.header().start(),
                        heat.dose(),
                        judged.outcome(),
                        leftOut,
                        traits(session, heat),
                        Bars.of(looks.seen())));
    }

    /** Heat of which readings are missing is no heat to compare. */
    private BatchTraits traits(Session session, BatchHeat heat) {
        BatchTraits traits = heat.traits();
        if (heat.dose().isPresent() && heat.leftOut().isEmpty())
            traits = traits.with(Trait.HEAT, heat.dose().get().equivalentCelsius());
        SetLog.Loaded set =
                SetLog.beside(session.file(), session.header().session()).load();
        problems.addAll(set.problems());
        Optional<CoolingPlace> place = set.record().map(SetRecord::place);
        return place.isPresent() ? traits.with(Trait.FRIDGE, place.get() == CoolingPlace.FRIDGE ? 1 : 0) : traits;
    }

    /** A copy of a session is the same batch. */
    private boolean isThereTwice(Session session) {
        Path before = taken.putIfAbsent(
                session.header().session() + " " + session.header().start(), session.file());
        if (before == null) return false;
        problems.add(new Problem(
                session.file().toString(),
                "This is the same batch as " + before.getFileName()
                        + ", so it and the looks beside it are passed over.",
                "A batch counts once. If looks lie beside the copy only, give them with look to the other one."));
        return true;
    }

    private static Of kind(Setup setup) {
        return BatchKind.of(setup) == BatchKind.REAL ? Of.REAL : Of.PRACTICE;
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
