package fifthform.monitor.analyse;

import fifthform.curves.contrast.BatchTraits;
import fifthform.curves.contrast.TraitCount;
import fifthform.curves.input.Recorded;
import fifthform.curves.learning.HeatCount;
import fifthform.curves.learning.HeatDose;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.learning.LeftOut;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Setup;
import fifthform.monitor.store.Session;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * The heat of a recorded batch, as the engine sees it now, and by what else it is held against others.
 *
 * @param recipe the chocolate that was in force at its end
 * @param dose the heat after the cool step; empty where none was seen
 * @param leftOut why it says nothing of a limit; empty where it does
 * @param traits what else its curve and its keys tell
 */
public record BatchHeat(Recipe recipe, Optional<HeatDose> dose, Optional<LeftOut> leftOut, BatchTraits traits) {
    public BatchHeat {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(dose, "dose");
        Objects.requireNonNull(leftOut, "leftOut");
        Objects.requireNonNull(traits, "traits");
    }

    /**
     * Goes through a session.
     *
     * @param scales by which scale the heat of a chocolate is counted
     */
    public static BatchHeat of(Session session, Function<Recipe, HeatScale> scales) {
        Recipe first = session.header().setup().recipe();
        BatchHeat heat = through(session, scales.apply(first));
        // Who set the right chocolate later only: once more, by its scale.
        boolean other = !scales.apply(heat.recipe()).equals(scales.apply(first));
        return other ? through(session, scales.apply(heat.recipe())) : heat;
    }

    private static BatchHeat through(Session session, HeatScale scale) {
        Analysis analysis = new Analysis(
                session.header().session(),
                session.header().setup(),
                session.header().start());
        HeatCount count = HeatCount.start(scale);
        TraitCount traits = TraitCount.START;
        for (Recorded recorded : session.inputs().toList()) {
            analysis.take(recorded.input());
            Recipe recipe =
                    analysis.state().setupInForce(session.header().setup()).recipe();
            count = count.with(recipe, analysis.state());
            traits = traits.with(recipe, recorded, analysis.state());
        }
        Setup setup = analysis.state().setupInForce(session.header().setup());
        return new BatchHeat(setup.recipe(), count.dose(), count.leftOut(setup.recipe()), traits.traits(setup));
    }
}
