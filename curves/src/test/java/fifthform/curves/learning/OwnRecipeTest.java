package fifthform.curves.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.check.Parsed;
import fifthform.curves.engine.TestRecipes;
import fifthform.curves.learning.OwnLimit.Says;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An own limit counts only in a recipe that was asked for, and only where it makes sense. */
class OwnRecipeTest {
    private static final Recipe DARK = TestRecipes.dark();
    private static final LocalDate DAY = LocalDate.of(2026, 2, 3);

    private static OwnLimit limit(Says says, double lower, double middle, double upper) {
        Band before = new Band(32.2, 33.8, 35.4);
        return new OwnLimit(
                says,
                33.8,
                9,
                4,
                new Band(lower, middle, upper),
                before,
                OptionalDouble.of(33.5),
                OptionalDouble.of(33.2));
    }

    private static Parsed<Recipe> own(double lower, double middle, double upper) {
        return OwnRecipe.of(DARK, limit(Says.LIMIT, lower, middle, upper), "my-dark", DAY);
    }

    private static String refusal(Parsed<Recipe> parsed) {
        return parsed.fold(recipe -> fail("was " + recipe), Object::toString);
    }

    @Test
    void itSaysWhereItsLimitComesFromAndCanBeReadAgain() {
        Recipe own = own(32.9, 33.36, 34.0).fold(r -> r, p -> fail(p.toString()));
        assertEquals(33.4, own.meltOut().limitCelsius());
        assertEquals(32.5, own.meltOut().warnCelsius());
        String text = RecipeText.write(own);
        assertTrue(
                text.contains("melt-out = 33.4 C  # own batches of story-dark, 9, 2026-02-03: harm began near 33.4 C"
                        + " (32.9 to 34.0); published 33.8 C"),
                text);
        Recipe again = RecipeText.parse("own", text).fold(r -> r, p -> fail(p.toString()));
        assertEquals(Optional.of("story-dark"), OwnRecipe.baseOf(again));
        assertEquals(DARK.work(), again.work());
        assertEquals(Optional.empty(), OwnRecipe.baseOf(DARK));
    }

    /** Lowered to the middle, raised only to the lower end; the warning gives way before the guard. */
    @ParameterizedTest
    @CsvSource({
        "32.9, 33.4, 34.0, 33.4, 32.5",
        "32.4, 33.0, 33.5, 33.0, 32.1",
        "34.1, 34.5, 34.9, 34.1, 32.5",
        "34.0, 34.9, 35.6, 34.0, 32.5"
    })
    void theLimitIsTheCautiousOne(double lower, double middle, double upper, double meltOut, double warn) {
        Recipe own = own(lower, middle, upper).fold(r -> r, p -> fail(p.toString()));
        assertEquals(meltOut, own.meltOut().limitCelsius());
        assertEquals(warn, own.meltOut().warnCelsius());
        assertTrue(own.meltOut().warnCelsius() < own.meltOut().guardCelsius());
    }

    @Test
    void whatMakesNoSenseIsRefusedWithAReason() {
        assertTrue(refusal(own(33.4, 34.4, 35.2)).contains("do not show surely enough"));
        assertTrue(refusal(own(32.5, 33.4, 34.6)).contains("is still 2.1 K wide"));
        assertTrue(refusal(own(32.2, 32.7, 33.1)).contains("leaves no room above the working range"));
        assertTrue(refusal(own(31.6, 32.1, 32.6)).contains("further from the published"));
        for (Says says : Says.values()) {
            if (says == Says.LIMIT) continue;
            Parsed<Recipe> none = OwnRecipe.of(DARK, limit(says, 32.9, 33.4, 34.0), "my-dark", DAY);
            assertTrue(refusal(none).contains("no limit of your own (" + says.word() + ")"));
        }
    }
}
