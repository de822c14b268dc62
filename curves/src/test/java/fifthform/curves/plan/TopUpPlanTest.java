package fifthform.curves.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.plan.BatchPlan.TopUpFor;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * The boiling water of the second step, against calorimetry worked by hand: the method of mixtures for what the kettle
 * gives (any textbook of physics; 4180 J/kgK for water, 500 for steel), and the exact solution of two bodies that cool by
 * Newton's law for where the bowl turns (two linear equations: sums of two exponentials), in place of the plan's steps.
 */
class TopUpPlanTest {
    private static final double ROOM = 21;

    /** 800 g of dark in 320 g of steel, over 3.2 kg of water in 800 g of steel. */
    private static Settled evening() {
        PlanRequest request = new PlanRequest(
                dark(),
                800,
                new Bowl("any", BowlMaterial.STEEL, OptionalDouble.empty(), Optional.empty()),
                OptionalDouble.of(320),
                OptionalDouble.of(800),
                BowlMaterial.STEEL,
                OptionalDouble.of(3200),
                OptionalDouble.of(15),
                OptionalDouble.empty(),
                true,
                new PlanRequest.Room(OptionalDouble.of(ROOM), OptionalDouble.of(50)),
                OptionalDouble.of(80));
        return Settled.of(request);
    }

    private static Recipe dark() {
        try (var in = TopUpPlanTest.class.getResourceAsStream("/recipes/dark.recipe")) {
            return RecipeText.parse("dark", new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .fold(r -> r, problems -> {
                        throw new AssertionError(problems);
                    });
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Water and pan, J/K: 3.2 · 4180 + 0.8 · 500. */
    private static final double BATH = 13_776;

    @Test
    void theKettleGivesWhatTheBathTakesAndTheBowlTurnsAtTheAim() {
        Settled evening = evening();
        TopUpPlan plan = new TopUpPlan(evening);
        double aim = plan.figures().get(0).value();
        double contact = evening.contact(evening.doubts().expected());
        double top = Surfaces.fromTop(0.8);
        double pan = Surfaces.fromPan(3.2);
        assertTrue(aim > 31 && aim < 31.5, "the aim lies in the lower half of the range: " + aim);
        List<TopUpFor> rows = plan.rows();
        assertTrue(rows.size() >= 4, rows.toString());
        for (TopUpFor row : rows) {
            double chocolate = 0.8 * Heat.chocolateCapacity(row.bowlCelsius()) + 0.32 * 500;
            double under = standing(row.bowlCelsius(), chocolate, contact, top, pan);
            // Method of mixtures: m·4180·(95 − after) = BATH·(after − under).
            double kettle = row.waterGrams() / 1000 * 4180;
            double after = (kettle * 95 + BATH * under) / (kettle + BATH);
            double turns = highest(row.bowlCelsius(), after, chocolate, contact, top, pan);
            assertEquals(aim, turns, 0.03, row.toString());
        }
    }

    /** A bowl that stood still for three minutes: what the top loses comes from the bath, but for what the bowl itself gives. */
    private static double standing(double celsius, double chocolate, double contact, double top, double pan) {
        double sinking = (top + pan) * (celsius - ROOM) / (chocolate + BATH);
        double share = 1 - Math.exp(-180 * contact / chocolate);
        return celsius + (top * (celsius - ROOM) - share * chocolate * sinking) / contact;
    }

    /** The highest of x(t) = T − room with x' = −(k + g)x + ky and y' = hx − (h + p)y, from its two exponentials. */
    private static double highest(double bowl, double bath, double chocolate, double contact, double top, double pan) {
        double a = -(contact + top) / chocolate;
        double b = contact / chocolate;
        double c = contact / BATH;
        double d = -(contact + pan) / BATH;
        double root = Math.sqrt((a - d) * (a - d) + 4 * b * c);
        double slow = (a + d + root) / 2;
        double fast = (a + d - root) / 2;
        double x = bowl - ROOM;
        double y = bath - ROOM;
        double rate = a * x + b * y;
        double ofSlow = (rate - fast * x) / (slow - fast);
        double ofFast = x - ofSlow;
        // x' = 0.
        double at = Math.log(-ofFast * fast / (ofSlow * slow)) / (slow - fast);
        return ROOM + ofSlow * Math.exp(slow * at) + ofFast * Math.exp(fast * at);
    }

    @Test
    void theColderItStandsTheMoreIsPouredAndItIsNeverFarFromTheSumWithoutLoss() {
        TopUpPlan plan = new TopUpPlan(evening());
        double aim = plan.figures().get(0).value();
        double before = Double.POSITIVE_INFINITY;
        for (TopUpFor row : plan.rows()) {
            assertTrue(row.waterGrams() < before, plan.rows().toString());
            before = row.waterGrams();
            // Without any loss all three would end at the aim: the least that can be needed.
            double rise = aim - row.bowlCelsius();
            double chocolate = 0.8 * Heat.chocolateCapacity(row.bowlCelsius()) + 0.32 * 500;
            double least = 1000 * (chocolate + BATH) * rise / (4180 * (95 - aim));
            assertTrue(row.waterGrams() > least, row + " against " + least);
        }
    }
}
