package fifthform.simulator.bench;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.Input;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeId;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.scenario.Scenario;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The real engine, as in a live session.
 *
 * @param setup what it was told beforehand
 * @param state what it knows
 */
public record EngineProgram(Setup setup, State state) implements Program {
    /** Of a stirred probe in a sheath; what the set-up of a maker who knows no better says. */
    private static final double USUAL_LAG_SECONDS = 4;

    public EngineProgram {
        Objects.requireNonNull(setup, "setup");
        Objects.requireNonNull(state, "state");
    }

    /** At the beginning of a batch of this scenario, told what a maker would tell and nothing learned before. */
    public static EngineProgram beginning(Scenario scenario, Recipe recipe, Instant at) {
        Setup setup = setup(scenario, recipe);
        return new EngineProgram(setup, Engine.start(setup, at));
    }

    private static Setup setup(Scenario scenario, Recipe recipe) {
        List<ProbeSetup> probes = List.of(
                probe(BatchRun.BOWL, Role.BOWL, scenario.bowlAdapter()),
                probe(BatchRun.BATH, Role.BATH, AdapterSettings.USUAL_BATH));
        return new Setup(
                recipe,
                scenario.bowl(),
                probes,
                Setup.USUAL_REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.SIMULATED,
                scenario.habits().plan().approach(),
                OptionalDouble.empty(),
                scenario.habits().plan().beginning(),
                scenario.habits().plan().holding());
    }

    /** A probe as a maker sets it up who knows no better: never checked, with the usual lag. */
    public static ProbeSetup probe(ProbeId id, Role role, AdapterSettings adapter) {
        return new ProbeSetup(
                id,
                role,
                adapter.language().talk().toString(),
                "bench",
                Correction.UNCHECKED,
                USUAL_LAG_SECONDS,
                adapter.language().protocol().sensor());
    }

    @Override
    public Heard hear(Input input) {
        Step step = Engine.step(setup, state, input);
        return new Heard(new EngineProgram(setup, step.after()), step.events());
    }

    @Override
    public OptionalDouble turnIfLiftedCelsius() {
        return state.forecast()
                .map(f -> OptionalDouble.of(f.ifLifted().celsius()))
                .orElse(OptionalDouble.empty());
    }
}
