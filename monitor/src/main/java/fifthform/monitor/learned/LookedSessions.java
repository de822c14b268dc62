package fifthform.monitor.learned;

import fifthform.curves.check.Problem;
import fifthform.curves.contrast.Bars;
import fifthform.curves.contrast.BatchTraits;
import fifthform.curves.contrast.Trait;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.learning.Judged;
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
import fifthform.monitor.texts.LearnedText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The sessions of a folder whose bars were looked at, real ones or practice and never both, by their chocolate. */
public final class LookedSessions {
    /** Which sessions. */
    public enum Of {
        REAL,
        /** Simulated, or from recorded bytes: no batch of their own. */
        PRACTICE;

        /** The word in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Of of;
    private final Recipes recipes;
    private final ReadBefore before;
    private final Map<String, Path> taken = new TreeMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Recipe> published = new TreeMap<>();
    private final Map<String, List<LearnedChocolate.Batch>> batches = new TreeMap<>();
    private int others;

    private LookedSessions(Of of, Recipes recipes, ReadBefore before) {
        this.of = of;
        this.recipes = recipes;
        this.before = before;
    }

    /**
     * Goes through a folder; what cannot be read is kept among the {@link #problems} and the rest counts.
     *
     * @param before sessions of this folder that were gone through before; grows by those that were not
     * @throws StoreException the folder cannot be listed
     */
    public static LookedSessions in(Path folder, Of of, Recipes recipes, ReadBefore before) throws StoreException {
        LookedSessions looked = new LookedSessions(of, recipes, before);
        List<Path> files = new SessionFiles(folder)
                .all().stream()
                        .filter(file -> Files.exists(LookFile.place(file)))
                        // Of a session and its copies the shortest name is the session's own.
                        .sorted(Comparator.comparingInt(
                                        (Path file) -> SessionFiles.name(file).length())
                                .thenComparing(Path::getFileName))
                        .toList();
        for (Path file : files) looked.take(file);
        before.save();
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
        Optional<GoneThrough> kept = before.find(file);
        if (kept.map(batch -> batch.of() != of).orElseGet(() -> isOfTheOtherKind(file))) {
            others++;
            return;
        }
        Optional<GoneThrough> found = kept.filter(this::isCountedSo).or(() -> goneThrough(file));
        if (found.isEmpty()) return;
        GoneThrough batch = found.get();
        if (isThereTwice(file, batch)) return;
        LookFile.Loaded looks = LookFile.beside(file, batch.session()).load();
        problems.addAll(looks.problems());
        if (looks.looks().isEmpty()) return;
        Judged judged = Outcome.of(looks.seen());
        batches.computeIfAbsent(batch.chocolate(), id -> new ArrayList<>())
                .add(new LearnedChocolate.Batch(
                        batch.session(),
                        batch.start(),
                        batch.dose(),
                        judged.outcome(),
                        batch.leftOut().or(judged::leftOut),
                        traits(file, batch),
                        Bars.of(looks.seen())));
    }

    /** By its header alone; one that cannot be read is said when the rest is read. */
    private boolean isOfTheOtherKind(Path file) {
        return JournalReader.readHeader(file).fold(header -> kind(header.setup()) != of, unreadable -> false);
    }

    /** Whether its heat would be counted by the same recipe today. */
    private boolean isCountedSo(GoneThrough batch) {
        Optional<Recipe> today = published(batch.chocolate());
        today.ifPresent(recipe -> published.putIfAbsent(batch.chocolate(), recipe));
        return today.filter(recipe -> HeatScale.of(recipe).equals(batch.scale()))
                .isPresent();
    }

    /** What is whole is kept for the next time; what is damaged is said each time. */
    private Optional<GoneThrough> goneThrough(Path file) {
        Optional<BasicFileAttributes> stamp = ReadBefore.stamp(file);
        Optional<Session> read = JournalReader.read(file).fold(Optional::of, unreadable -> {
            tell(file, unreadable);
            return Optional.empty();
        });
        return read.map(session -> {
            tell(file, session.problems());
            BatchHeat heat = BatchHeat.of(session, recipe -> HeatScale.of(publishedOf(recipe)));
            Recipe recipe = publishedOf(heat.recipe());
            published.putIfAbsent(recipe.id(), recipe);
            GoneThrough found = GoneThrough.of(
                    session.header().session(),
                    session.header().start(),
                    kind(session.header().setup()),
                    recipe.id(),
                    HeatScale.of(recipe),
                    heat);
            if (session.problems().isEmpty()) before.keep(file, stamp, found);
            return found;
        });
    }

    /** Of many sessions a line's number alone does not say which. */
    private void tell(Path file, List<Problem> found) {
        String name = String.valueOf(file.getFileName());
        for (Problem p : found)
            problems.add(p.where().contains(name) ? p : new Problem(name + ", " + p.where(), p.what(), p.whatToDo()));
    }

    /** Heat of which readings are missing is no heat to compare. */
    private BatchTraits traits(Path file, GoneThrough batch) {
        BatchTraits traits = batch.traits();
        if (batch.dose().isPresent() && batch.leftOut().isEmpty())
            traits = traits.with(Trait.HEAT, batch.dose().get().equivalentCelsius());
        SetLog.Loaded set = SetLog.beside(file, batch.session()).load();
        problems.addAll(set.problems());
        Optional<CoolingPlace> place = set.record().map(SetRecord::place);
        return place.isPresent() ? traits.with(Trait.FRIDGE, place.get() == CoolingPlace.FRIDGE ? 1 : 0) : traits;
    }

    /** A copy of a session is the same batch. */
    private boolean isThereTwice(Path file, GoneThrough batch) {
        Path first = taken.putIfAbsent(batch.session() + " " + batch.start(), file);
        if (first == null) return false;
        problems.add(new Problem(
                file.toString(),
                LearnedText.THIS_IS_THE_SAME_BATCH_AS.say(first.getFileName()),
                LearnedText.A_BATCH_COUNTS_ONCE_IF_LOOKS.say()));
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
        return published(id).orElse(recipe);
    }

    private Optional<Recipe> published(String id) {
        return Optional.ofNullable(published.get(id))
                .or(() -> recipes.builtIn(id).map(KnownRecipe::recipe))
                .or(() -> known(id));
    }

    private Optional<Recipe> known(String id) {
        return recipes.known().stream()
                .map(KnownRecipe::recipe)
                .filter(recipe -> recipe.id().equals(id))
                .findFirst();
    }
}
