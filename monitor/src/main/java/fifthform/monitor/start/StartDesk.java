package fifthform.monitor.start;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.bowls.KeptBowl;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.start.StartChoice.Way;
import fifthform.monitor.texts.InWords;
import fifthform.monitor.texts.StartText;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What stands on the start page, and what each key does there. Knows nothing of windows. */
public final class StartDesk {
    private static final double USUAL_GRAMS = 800;
    private static final double STEP_GRAMS = 50;

    /** The least chocolate that the start of a batch offers, g. Own choice. */
    public static final double LEAST_GRAMS = 50;

    private static final String USUAL_CHOCOLATE = "dark";

    private final StartStock stock;
    private final List<KeptBowl> bowls;
    private final Map<StartStep, Integer> selected = new EnumMap<>(StartStep.class);
    private StartStep step = StartStep.CHOCOLATE;
    private OptionalDouble grams;
    private Optional<List<SeenProbe>> probes = Optional.empty();
    private String problem = "";
    private boolean waiting;

    public StartDesk(StartStock stock) {
        this.stock = stock;
        bowls = bowls(stock);
        grams = stock.last().grams();
        String chocolate = stock.last().chocolate().orElse(USUAL_CHOCOLATE);
        selected.put(StartStep.CHOCOLATE, indexOf(chocolate));
        selected.put(StartStep.BOWL, indexOfBowl(stock.last().bowl()));
        selected.put(StartStep.GO, 0);
    }

    /** Those that were used before, then one of each material that nobody has named yet. */
    private static List<KeptBowl> bowls(StartStock stock) {
        List<KeptBowl> all = new ArrayList<>(stock.bowls());
        for (BowlMaterial material : BowlMaterial.values()) {
            if (material == BowlMaterial.UNKNOWN) continue;
            KeptBowl fresh = KeptBowl.named(material.word(), material);
            if (all.stream().noneMatch(bowl -> bowl.id().equals(fresh.id()))) all.add(fresh);
        }
        return List.copyOf(all);
    }

    private int indexOf(String chocolate) {
        for (int i = 0; i < stock.recipes().size(); i++)
            if (stock.recipes().get(i).id().equals(chocolate)) return i;
        return 0;
    }

    /** The last row is a bowl that nothing is kept of. */
    private int indexOfBowl(Optional<String> name) {
        if (name.isEmpty()) return stock.last().isKnown() ? bowls.size() : 0;
        for (int i = 0; i < bowls.size(); i++) if (bowls.get(i).id().equals(KeptBowl.idOf(name.get()))) return i;
        return bowls.size();
    }

    public StartStep step() {
        return step;
    }

    public Recipe recipe() {
        return stock.recipes().get(selected.get(StartStep.CHOCOLATE));
    }

    /** Empty where the bowl is one that nothing is kept of. */
    public Optional<KeptBowl> bowl() {
        int chosen = selected.get(StartStep.BOWL);
        return chosen < bowls.size() ? Optional.of(bowls.get(chosen)) : Optional.empty();
    }

    public OptionalDouble grams() {
        return grams;
    }

    /** What was seen plugged in; empty until somebody has looked. */
    public Optional<List<SeenProbe>> probes() {
        return probes;
    }

    /** Why the last start did not come about; empty where nothing is wrong. */
    public String problem() {
        return problem;
    }

    /** Whether the start is under way, and no key means anything. */
    public boolean isWaiting() {
        return waiting;
    }

    /** Somebody has looked what is plugged in; the bowl's likeliest probe first. */
    public void saw(List<SeenProbe> seen) {
        if (probes.filter(seen::equals).isPresent()) return;
        Optional<String> was = step == StartStep.GO ? port() : Optional.empty();
        probes = Optional.of(List.copyOf(seen));
        if (!seen.isEmpty() && problem.equals(StartText.PLUG_IN_FIRST.say())) problem = "";
        int place = 0;
        for (int i = 0; i < seen.size(); i++)
            if (was.filter(seen.get(i).port()::equals).isPresent()) place = i;
        selected.put(StartStep.GO, place);
    }

    /** The start did not come about: everything stays as it was chosen. */
    public void refuse(String why) {
        waiting = false;
        problem = why;
    }

    public int selected() {
        return selected.get(step);
    }

    /** What there is to choose from in this step. */
    public List<StartRow> rows() {
        return rows(step);
    }

    private List<StartRow> rows(StartStep of) {
        StartWords words = new StartWords(stock.units());
        List<StartRow> rows = new ArrayList<>();
        switch (of) {
            case CHOCOLATE -> stock.recipes().forEach(recipe -> rows.add(words.chocolate(recipe)));
            case BOWL -> {
                bowls.forEach(bowl -> rows.add(words.bowl(bowl, grams)));
                rows.add(words.anyBowl());
            }
            case GO -> {
                probes.orElse(List.of()).forEach(probe -> rows.add(words.probe(probe)));
                if (probes.orElse(List.of()).isEmpty()) rows.add(words.noProbe(probes.isPresent()));
                rows.add(words.practice());
                rows.add(words.ownHands());
            }
        }
        return rows;
    }

    /** What a step says of itself at the top: its name, and what is chosen where that is settled. */
    public String heading(StartStep of) {
        return switch (of) {
            case CHOCOLATE -> StartText.HEADING.say(of.words(), recipe().name());
            case BOWL -> StartText.HEADING.say(of.words(), bowlWords());
            case GO -> of.words();
        };
    }

    /** Chocolate and bowl in one line. */
    public String chosen() {
        return StartText.CHOSEN.say(recipe().name(), bowlWords());
    }

    private String bowlWords() {
        String name =
                bowl().map(bowl -> InWords.bowl(bowl.name(), bowl.material())).orElseGet(StartText.ANY_BOWL_SHORT::say);
        return grams.isPresent() ? StartText.BOWL_AND_GRAMS.say(name, whole(grams.getAsDouble())) : name;
    }

    /** How the last real batch was begun, in a line; empty where there was none. */
    public Optional<String> last() {
        LastStart last = stock.last();
        if (!last.isKnown()) return Optional.empty();
        String bowl = last.bowl().orElseGet(StartText.ANY_BOWL_SHORT::say);
        String much = last.grams().isPresent()
                ? StartText.BOWL_AND_GRAMS.say(bowl, whole(last.grams().getAsDouble()))
                : bowl;
        return Optional.of(StartText.LAST.say(
                last.chocolate().orElseThrow(), much, last.probe().orElseThrow()));
    }

    /** The batch that can be gone on with. */
    public Optional<String> cutOff() {
        return stock.cutOff();
    }

    public void up() {
        select(selected() - 1);
    }

    public void down() {
        select(selected() + 1);
    }

    /** Round and round, so that one key is enough to reach every row. */
    public void select(int row) {
        problem = "";
        selected.put(step, Math.floorMod(row, rows().size()));
    }

    /** More or less chocolate in the bowl; only where the bowl is chosen. */
    public void grams(int steps) {
        if (step != StartStep.BOWL) return;
        double from = grams.orElse(USUAL_GRAMS - steps * STEP_GRAMS);
        double next = Math.round(from / STEP_GRAMS + steps) * STEP_GRAMS;
        grams = OptionalDouble.of(Math.max(LEAST_GRAMS, Math.min(Bowl.MOST_GRAMS, next)));
    }

    /** A step back; answers whether there was one. */
    public boolean back() {
        problem = "";
        if (step == StartStep.CHOCOLATE) return false;
        step = StartStep.values()[step.ordinal() - 1];
        return true;
    }

    /** To a step that was reached already or is the next one. */
    public void open(StartStep other) {
        problem = "";
        step = other;
    }

    /** Takes the row that is selected: on to the next step, or, in the last, off. */
    public Optional<StartChoice> take() {
        problem = "";
        if (step != StartStep.GO) {
            step = StartStep.values()[step.ordinal() + 1];
            return Optional.empty();
        }
        int found = probes.orElse(List.of()).size();
        int practice = Math.max(1, found);
        if (selected() == practice) return Optional.of(practise());
        if (selected() == practice + 1) return Optional.of(ownHands());
        if (port().isEmpty()) problem = StartText.PLUG_IN_FIRST.say();
        return port().map(port ->
                off(new StartChoice(Way.PROBE, recipe().id(), bowl().map(KeptBowl::name), grams, Optional.of(port))));
    }

    private Optional<String> port() {
        List<SeenProbe> seen = probes.orElse(List.of());
        int at = selected.get(StartStep.GO);
        return at < seen.size() ? Optional.of(seen.get(at).port()) : Optional.empty();
    }

    /** An invented bowl in the hands of a simulated maker. */
    public StartChoice practise() {
        return off(simulated(Way.PRACTICE));
    }

    /** An invented bowl in the maker's own hands. */
    public StartChoice ownHands() {
        return off(simulated(Way.OWN_HANDS));
    }

    private StartChoice simulated(Way way) {
        return new StartChoice(way, recipe().id(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    /** As the last real batch was begun; empty where there was none. */
    public Optional<StartChoice> asLast() {
        LastStart last = stock.last();
        if (!last.isKnown()) return Optional.empty();
        return Optional.of(off(new StartChoice(
                Way.AS_LAST, last.chocolate().orElseThrow(), last.bowl(), last.grams(), Optional.empty())));
    }

    /** The batch that was cut off; empty where there is none. */
    public Optional<StartChoice> goOn() {
        if (stock.cutOff().isEmpty()) return Optional.empty();
        return Optional.of(off(simulated(Way.GO_ON)));
    }

    private StartChoice off(StartChoice choice) {
        problem = "";
        waiting = true;
        return choice;
    }

    /** The cautions of a real bowl and of what is in it, for the last step. */
    public List<String> cautions() {
        List<String> cautions =
                new ArrayList<>(List.of(StartText.CAUTION_SCALD.say(), StartText.CAUTION_BATTERY.say()));
        if (recipe().composition().milkFatFraction() > 0) cautions.add(StartText.CAUTION_ALLERGEN.say());
        return cautions;
    }

    static String whole(double grams) {
        return Long.toString(Math.round(grams));
    }
}
