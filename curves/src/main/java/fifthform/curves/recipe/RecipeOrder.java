package fifthform.curves.recipe;

import static fifthform.curves.recipe.RecipeKey.BATH;
import static fifthform.curves.recipe.RecipeKey.COCOA_BUTTER;
import static fifthform.curves.recipe.RecipeKey.COOL_HIGH;
import static fifthform.curves.recipe.RecipeKey.COOL_LOW;
import static fifthform.curves.recipe.RecipeKey.MELT_HIGH;
import static fifthform.curves.recipe.RecipeKey.MELT_LOW;
import static fifthform.curves.recipe.RecipeKey.MELT_OUT;
import static fifthform.curves.recipe.RecipeKey.MILK_FAT;
import static fifthform.curves.recipe.RecipeKey.OTHER_SOLIDS;
import static fifthform.curves.recipe.RecipeKey.SCORCH;
import static fifthform.curves.recipe.RecipeKey.SUGAR;
import static fifthform.curves.recipe.RecipeKey.WARN;
import static fifthform.curves.recipe.RecipeKey.WORK_HIGH;
import static fifthform.curves.recipe.RecipeKey.WORK_LOW;

import fifthform.curves.check.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** How the values of a recipe must lie to each other; judged only where both are known. */
final class RecipeOrder {
    /** Sums of printed percentages are off by a rounding or two; more is a slip. The same 0.001 as in Composition. */
    private static final BigDecimal SUM_TOLERANCE_PERCENT = new BigDecimal("0.1");

    private static final List<Rule> RULES = List.of(
            new Rule(MELT_LOW, Relation.BELOW, MELT_HIGH),
            new Rule(COOL_LOW, Relation.BELOW, COOL_HIGH),
            new Rule(WORK_LOW, Relation.BELOW, WORK_HIGH),
            new Rule(COOL_HIGH, Relation.BELOW, WORK_LOW),
            new Rule(WORK_HIGH, Relation.AT_MOST, WARN),
            new Rule(WARN, Relation.BELOW, MELT_OUT),
            new Rule(MELT_OUT, Relation.BELOW, MELT_LOW),
            new Rule(MELT_HIGH, Relation.AT_MOST, SCORCH),
            new Rule(WORK_HIGH, Relation.BELOW, BATH),
            new Rule(BATH, Relation.AT_MOST, SCORCH));

    private RecipeOrder() {}

    /** Every rule that the values break. */
    static List<Problem> problems(String name, Map<RecipeKey, BigDecimal> values, Map<RecipeKey, RecipeLine> lines) {
        List<Problem> problems = new ArrayList<>();
        for (Rule rule : RULES) {
            if (!values.containsKey(rule.lower) || !values.containsKey(rule.higher)) continue;
            if (!rule.holds(values.get(rule.lower), values.get(rule.higher))) {
                problems.add(rule.problem(lines.get(rule.lower), lines.get(rule.higher)));
            }
        }
        List<BigDecimal> shares = Stream.of(COCOA_BUTTER, MILK_FAT, SUGAR, OTHER_SOLIDS)
                .filter(values::containsKey)
                .map(values::get)
                .toList();
        BigDecimal sum = shares.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal off = sum.subtract(BigDecimal.valueOf(100)).abs();
        if (shares.size() == 4 && off.compareTo(SUM_TOLERANCE_PERCENT) > 0) {
            problems.add(new Problem(
                    name,
                    "cocoa butter, milk fat, sugar and other solids make " + RecipeQuantity.write(sum) + " %.",
                    "Change them so that they make 100 %."));
        }
        return problems;
    }

    private enum Relation {
        BELOW("below"),
        AT_MOST("at most");

        final String words;

        Relation(String words) {
            this.words = words;
        }
    }

    private record Rule(RecipeKey lower, Relation relation, RecipeKey higher) {
        boolean holds(BigDecimal low, BigDecimal high) {
            int compared = low.compareTo(high);
            return relation == Relation.BELOW ? compared < 0 : compared <= 0;
        }

        Problem problem(RecipeLine low, RecipeLine high) {
            return new Problem(
                    low.where(),
                    "\"" + lower.word() + "\" (" + low.value() + ") is not " + relation.words + " \"" + higher.word()
                            + "\" (" + high.value() + ").",
                    "Change one of the two.");
        }
    }
}
