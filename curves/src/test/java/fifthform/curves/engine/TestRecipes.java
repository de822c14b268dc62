package fifthform.curves.engine;

import fifthform.curves.recipe.CelsiusRange;
import fifthform.curves.recipe.Composition;
import fifthform.curves.recipe.MeltOut;
import fifthform.curves.recipe.PhaseTarget;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** An invented dark chocolate and set-up for stories. */
public final class TestRecipes {
    private TestRecipes() {}

    public static Recipe dark() {
        return new Recipe(
                "story-dark",
                "Story dark (demo)",
                new Composition(0.38, 0, 0.30, 0.32),
                new PhaseTarget(new CelsiusRange(45, 50), Duration.ofMinutes(5)),
                new PhaseTarget(new CelsiusRange(27, 28), Duration.ofMinutes(6)),
                new PhaseTarget(new CelsiusRange(31, 32), Duration.ZERO),
                new MeltOut(32.5, 33.8),
                55,
                45,
                "invented for tests",
                List.of());
    }

    public static Setup setup() {
        return new Setup(
                dark(),
                new Bowl("story", BowlMaterial.STEEL, OptionalDouble.of(800), Optional.empty()),
                List.of(new ProbeSetup(
                        StoryKitchen.BOWL,
                        Role.BOWL,
                        "text-lines",
                        "story",
                        Correction.UNCHECKED,
                        ProbeSetup.USUAL_LAG_SECONDS)),
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.SIMULATED,
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(),
                Beginning.WHOLE,
                Optional.empty());
    }
}
