package fifthform.curves.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompositionTargetsTest {
    @Test
    void aPlainDarkGetsTheTargetsOfTheBuiltInDark() {
        Recipe worked = recipe(38, 0, 30);
        Recipe dark = BuiltIn.recipe("dark");
        assertEquals(dark.composition(), worked.composition());
        assertEquals(dark.melt(), worked.melt());
        assertEquals(dark.cool(), worked.cool());
        assertEquals(dark.work(), worked.work());
        assertEquals(dark.meltOut(), worked.meltOut());
        assertEquals(dark.scorchCelsius(), worked.scorchCelsius());
        assertEquals(dark.rewarmBathCelsius(), worked.rewarmBathCelsius());
    }

    /** The reference table's own words: milk is dark minus 1.6 K at 17 % milk fat in the fat, white minus 2.0 K at 21 %. */
    @ParameterizedTest
    @CsvSource({"0.17, -1.6", "0.21, -2.0", "0.10, -0.9", "0, 0"})
    void milkFatMovesTheTargets(double milkFatInFat, double kelvin) {
        assertEquals(kelvin, CompositionTargets.shiftKelvin(milkFatInFat), 0.05);
    }

    /** The synthesis of printed targets and the rule agree within what the rule's ±40 % allow, and for milk much better. */
    @ParameterizedTest
    @CsvSource({"milk, 0.2", "white, 0.6"})
    void agreesWithTheBuiltInRecipesOfTheSameComposition(String id, double kelvin) {
        Recipe built = BuiltIn.recipe(id);
        Recipe worked =
                CompositionTargets.from("x", built.composition()).fold(recipe -> recipe, p -> fail(p.toString()));
        assertEquals(built.work().range().lowCelsius(), worked.work().range().lowCelsius(), kelvin);
        assertEquals(built.cool().range().lowCelsius(), worked.cool().range().lowCelsius(), kelvin);
        assertEquals(built.meltOut().warnCelsius(), worked.meltOut().warnCelsius(), kelvin);
        assertEquals(built.meltOut().limitCelsius(), worked.meltOut().limitCelsius(), kelvin);
        assertEquals(built.melt(), worked.melt());
        assertEquals(built.rewarmBathCelsius(), worked.rewarmBathCelsius());
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 50", "60, 30, 20", "-1, 0, 30", "NaN, 0, 30", "20, 10, 40"})
    void refusesWhatItKnowsNothingAbout(double butter, double milkFat, double sugar) {
        String said = CompositionTargets.fromPercent("x", butter, milkFat, sugar)
                .fold(recipe -> fail("accepted " + recipe), Object::toString);
        assertTrue(said.length() > 40, said);
    }

    @Test
    void saysWhereTheRuleIsStretched() {
        assertTrue(recipe(28, 11, 40).basis().contains("beyond the 25 %"));
        assertTrue(!recipe(30, 9, 40).basis().contains("beyond"));
    }

    /** Whatever is accepted stands in the right order and can be written and read like any recipe. */
    @Test
    void whateverIsAcceptedIsAWholeRecipe() {
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double butter = random.nextDouble(5, 50);
            double milkFat = random.nextDouble(0, 0.42) * butter;
            Recipe recipe = recipe(butter, milkFat, random.nextDouble(0, 25));
            String seedWords = "seed " + seed;
            Recipe again = RecipeText.parse("x", RecipeText.write(recipe))
                    .fold(read -> read, problems -> fail(seedWords + problems));
            assertEquals(recipe, again, seedWords);
        }
    }

    private static Recipe recipe(double butter, double milkFat, double sugar) {
        return CompositionTargets.fromPercent("x", butter, milkFat, sugar)
                .fold(recipe -> recipe, problems -> fail(problems.toString()));
    }
}
