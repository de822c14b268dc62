package fifthform.curves.recipe;

import fifthform.curves.check.Parsed;
import fifthform.curves.check.Problem;
import fifthform.curves.recipe.RecipeKey.Kind;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Recipes as flat text: {@code key = value unit  # source}, one value a line. Temperatures in C (F is taken and
 * converted), shares in % of mass, times in min or s.
 */
public final class RecipeText {
    private static final String ID_SHAPE = "[a-z0-9][a-z0-9-]*";

    private final String name;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<RecipeKey, RecipeLine> lines = new EnumMap<>(RecipeKey.class);
    private final Map<RecipeKey, BigDecimal> values = new EnumMap<>(RecipeKey.class);
    private final List<Source> sources = new ArrayList<>();

    private RecipeText(String name) {
        this.name = name;
    }

    /**
     * Reads a recipe.
     *
     * @param name where the text comes from, for messages; usually the file's name
     * @param text the whole text
     * @return the recipe, or every problem found
     */
    public static Parsed<Recipe> parse(String name, String text) {
        RecipeText reading = new RecipeText(name);
        reading.takeApart(text);
        reading.understand();
        return reading.problems.isEmpty() ? Parsed.accepted(reading.recipe()) : Parsed.refused(reading.problems);
    }

    /**
     * The recipe as text; {@link #parse} of it gives an equal recipe where its numbers have at most six decimals and
     * its holds whole milliseconds, as those of every parsed recipe.
     *
     * @throws IllegalArgumentException if a name, basis or source could not be read back, such as one of two lines
     */
    public static String write(Recipe recipe) {
        return new RecipeWriting(recipe).text();
    }

    static boolean isId(String text) {
        return text.matches(ID_SHAPE);
    }

    static Problem notAnId(String where, String text) {
        return new Problem(
                where,
                "The id \"" + text + "\" cannot be used in commands and file names.",
                "Use lower-case letters, digits and hyphens, for example: dark-70");
    }

    private void takeApart(String text) {
        int number = 0;
        // A byte order mark is how some editors begin a file; it means nothing here.
        for (String line :
                (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList()) {
            number++;
            if (!RecipeLine.isBlank(line)) {
                RecipeLine.read(name + ", line " + number, line).fold(this::keep, problems::addAll);
            }
        }
        for (RecipeKey key : RecipeKey.values()) {
            if (!lines.containsKey(key) && problems.stream().noneMatch(p -> isAbout(p, key))) {
                problems.add(new Problem(
                        name,
                        "\"" + key.word() + "\" is missing.",
                        "Add a line, for example: " + key.word() + " = " + key.kind.example + "  # source"));
            }
        }
    }

    /** Whether the problem already speaks of the key, so that one slip is not reported twice. */
    private static boolean isAbout(Problem problem, RecipeKey key) {
        return problem.what().startsWith("\"" + key.word())
                || problem.whatToDo().equals("Did you mean \"" + key.word() + "\"?");
    }

    private boolean keep(RecipeLine line) {
        RecipeLine before = lines.putIfAbsent(line.key(), line);
        if (before != null) {
            return problems.add(new Problem(
                    line.where(),
                    "\"" + line.key().word() + "\" stands here a second time (first: " + before.where() + ").",
                    "Keep one of the two."));
        }
        line.source().ifPresent(text -> sources.add(new Source(line.key().word(), text)));
        return true;
    }

    private void understand() {
        for (RecipeLine line : lines.values()) {
            if (line.key().kind.isNumber()) {
                RecipeQuantity.read(line)
                        .fold(
                                value -> {
                                    values.put(line.key(), value);
                                    return true;
                                },
                                problems::addAll);
            } else if (line.key().kind == Kind.ID && !isId(line.value())) {
                problems.add(notAnId(line.where(), line.value()));
            }
        }
        problems.addAll(RecipeOrder.problems(name, values, lines));
    }

    private Recipe recipe() {
        return new Recipe(
                text(RecipeKey.ID),
                text(RecipeKey.NAME),
                new Composition(
                        fraction(RecipeKey.COCOA_BUTTER),
                        fraction(RecipeKey.MILK_FAT),
                        fraction(RecipeKey.SUGAR),
                        fraction(RecipeKey.OTHER_SOLIDS)),
                target(RecipeKey.MELT_LOW, RecipeKey.MELT_HIGH, hold(RecipeKey.MELT_HOLD)),
                target(RecipeKey.COOL_LOW, RecipeKey.COOL_HIGH, hold(RecipeKey.COOL_HOLD)),
                target(RecipeKey.WORK_LOW, RecipeKey.WORK_HIGH, Duration.ZERO),
                new MeltOut(number(RecipeKey.WARN), number(RecipeKey.MELT_OUT)),
                number(RecipeKey.SCORCH),
                number(RecipeKey.BATH),
                text(RecipeKey.BASIS),
                sources);
    }

    private String text(RecipeKey key) {
        return Optional.ofNullable(lines.get(key)).orElseThrow().value();
    }

    private double number(RecipeKey key) {
        return values.get(key).doubleValue();
    }

    /** Moved in decimals: 35.7 / 100 in binary is not the number that 0.357 is. */
    private double fraction(RecipeKey key) {
        return values.get(key).movePointLeft(2).doubleValue();
    }

    private Duration hold(RecipeKey key) {
        return Duration.ofMillis(Math.round(values.get(key).movePointRight(3).doubleValue()));
    }

    private PhaseTarget target(RecipeKey low, RecipeKey high, Duration dwell) {
        return new PhaseTarget(new CelsiusRange(number(low), number(high)), dwell);
    }
}
