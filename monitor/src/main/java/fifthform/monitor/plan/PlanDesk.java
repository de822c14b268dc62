package fifthform.monitor.plan;

import fifthform.curves.plan.BatchPlan;
import fifthform.curves.plan.PlanRequest;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.settings.Units;
import fifthform.monitor.texts.PlanText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** What stands in the plan's form, and the plan that follows from it. Knows nothing of windows. */
public final class PlanDesk {
    private static final String USUAL_AMOUNT = "800";

    private final List<Recipe> recipes;
    private final List<Bowl> bowls;
    private final Units units;
    private final Path cards;
    private final Supplier<LocalDate> today;
    private final Map<PlanField, String> typed = new EnumMap<>(PlanField.class);
    private Recipe recipe;
    private Bowl bowl;
    private BowlMaterial pan = BowlMaterial.STEEL;
    private boolean checked;
    private boolean why;
    private Optional<BatchPlan> plan = Optional.empty();
    private List<String> problems = List.of();
    private String said = "";

    /**
     * A form with a usual amount in the first chocolate and bowl.
     *
     * @param recipes chocolates to choose from; at least one
     * @param bowls bowls to choose from; at least one
     * @param cards folder for cards; made when the first is saved
     */
    public PlanDesk(List<Recipe> recipes, List<Bowl> bowls, Units units, Path cards, Supplier<LocalDate> today) {
        this.recipes = List.copyOf(recipes);
        this.bowls = List.copyOf(bowls);
        this.units = units;
        this.cards = cards;
        this.today = today;
        recipe = this.recipes.get(0);
        bowl = this.bowls.get(0);
        type(PlanField.AMOUNT, USUAL_AMOUNT);
    }

    public List<Recipe> recipes() {
        return recipes;
    }

    public List<Bowl> bowls() {
        return bowls;
    }

    public Recipe recipe() {
        return recipe;
    }

    public Bowl bowl() {
        return bowl;
    }

    public boolean isChecked() {
        return checked;
    }

    public boolean showsWhy() {
        return why;
    }

    public String typed(PlanField field) {
        return typed.getOrDefault(field, "");
    }

    /** What happened last, for the foot of the screen. */
    public String said() {
        return said;
    }

    /** Everything in the form that cannot be used; empty where there is a plan. */
    public List<String> problems() {
        return problems;
    }

    /** The plan of what stands in the form; empty where something in it cannot be used. */
    public Optional<BatchPlan> plan() {
        return plan;
    }

    /** The page of that plan. */
    public Optional<PlanPage> page() {
        return plan.map(made -> new PlanPage(made, units));
    }

    /** The card of that plan. */
    public Optional<PlanCard> card() {
        return plan.map(made -> new PlanCard(made, units));
    }

    public void choose(Recipe other) {
        recipe = other;
        work();
    }

    public void choose(Bowl other) {
        bowl = other;
        work();
    }

    /** What the pan of the warm bath may be made of. */
    public static List<BowlMaterial> pans() {
        return List.of(BowlMaterial.STEEL, BowlMaterial.ALUMINIUM, BowlMaterial.GLASS);
    }

    /** What the pan of the warm bath is made of. */
    public BowlMaterial pan() {
        return pan;
    }

    public void choosePan(BowlMaterial other) {
        pan = other;
        work();
    }

    public Units units() {
        return units;
    }

    /** Whether the thermometer that reads the bath was checked. */
    public void check(boolean isChecked) {
        checked = isChecked;
        work();
    }

    public void type(PlanField field, String text) {
        typed.put(field, text.strip());
        work();
    }

    public void toggleWhy() {
        why = !why;
    }

    public void say(String words) {
        said = words;
    }

    /** When the melting begins, where that was said and can be read. */
    public Optional<LocalTime> start() {
        String text = typed(PlanField.START);
        if (text.isEmpty()) return Optional.empty();
        try {
            return Optional.of(LocalTime.parse(text.length() == 4 ? "0" + text : text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Writes the card as a drawing and says where; an older card stays. */
    public void saveCard() {
        if (card().isEmpty()) {
            say(PlanText.SAID_NO_PLAN.say());
            return;
        }
        try {
            Files.createDirectories(cards);
            String name = "plan-" + today.get() + "-" + recipe.id();
            Path file = cards.resolve(name + ".svg");
            for (int n = 2; Files.exists(file); n++) file = cards.resolve(name + "-" + n + ".svg");
            Files.writeString(file, card().orElseThrow().svg());
            say(PlanText.SAID_SAVED.say(file.toString()));
        } catch (IOException e) {
            say(PlanText.SAID_NOT_SAVED.say(String.valueOf(e.getMessage())));
        }
    }

    private void work() {
        List<String> wrong = new ArrayList<>();
        Map<PlanField, OptionalDouble> numbers = new EnumMap<>(PlanField.class);
        for (PlanField field : PlanField.values()) {
            if (field != PlanField.START) numbers.put(field, number(field, wrong));
        }
        if (typed(PlanField.AMOUNT).isEmpty()) wrong.add(PlanText.PROBLEM_NO_AMOUNT.say());
        if (!typed(PlanField.START).isEmpty() && start().isEmpty()) wrong.add(PlanText.PROBLEM_START.say());
        problems = List.copyOf(wrong);
        plan = problems.isEmpty() ? Optional.of(BatchPlan.of(request(numbers))) : Optional.empty();
    }

    private OptionalDouble number(PlanField field, List<String> wrong) {
        String text = typed(field).replace(',', '.');
        if (text.isEmpty()) return OptionalDouble.empty();
        try {
            double value = field.taken(Double.parseDouble(text), units);
            if (value >= field.low() && value <= field.high()) return OptionalDouble.of(value);
        } catch (NumberFormatException e) {
            // said below, like a number out of its range
        }
        wrong.add(PlanText.PROBLEM_NUMBER.say(
                field.label(units),
                Decimal.of(field.shown(field.low(), units), 0),
                Decimal.of(field.shown(field.high(), units), 0)));
        return OptionalDouble.empty();
    }

    private PlanRequest request(Map<PlanField, OptionalDouble> numbers) {
        return new PlanRequest(
                recipe,
                numbers.get(PlanField.AMOUNT).orElseThrow(),
                bowl,
                numbers.get(PlanField.BOWL_WEIGHT),
                numbers.get(PlanField.PAN_WEIGHT),
                pan,
                numbers.get(PlanField.BATH_WATER),
                numbers.get(PlanField.TAP),
                numbers.get(PlanField.QUICK_BATH),
                checked,
                new PlanRequest.Room(numbers.get(PlanField.ROOM), numbers.get(PlanField.HUMIDITY)),
                numbers.get(PlanField.BAR));
    }
}
