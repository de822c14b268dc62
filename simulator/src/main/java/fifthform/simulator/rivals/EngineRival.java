package fifthform.simulator.rivals;

import fifthform.curves.engine.Engine;
import fifthform.curves.input.Input;
import fifthform.curves.input.MakerAction.Place;
import fifthform.curves.input.Sample;
import fifthform.curves.recipe.Phase;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Bowl;
import fifthform.curves.setup.BowlMaterial;
import fifthform.curves.setup.LearnedCoast;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.bench.EngineProgram;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.maker.Manner;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The engine as a rival.
 *
 * @param engine as it is in a live session
 * @param knowledge what it was told; without a bath probe it hears none
 */
record EngineRival(EngineProgram engine, Knowledge knowledge) implements Rival {
    /** The middle of what the judges take, as the engine would have measured it by now. */
    private static final Duration REACTION = Duration.ofMillis(2500);

    EngineRival {
        Objects.requireNonNull(engine, "engine");
        Objects.requireNonNull(knowledge, "knowledge");
    }

    /** At the beginning of a batch. */
    static EngineRival beginning(JudgedKitchen kitchen, Knowledge knowledge, Manner manner) {
        Setup setup = approach(setup(kitchen, knowledge), manner);
        return new EngineRival(new EngineProgram(setup, Engine.start(setup, BatchRun.BEGINS)), knowledge);
    }

    /** The one place where the engine is told whether its maker wants one lift or touches. */
    private static Setup approach(Setup setup, Manner manner) {
        return setup.withApproach(manner == Manner.TOUCHES ? Approach.TOUCHES_WHERE_UNSURE : Approach.ONE_LIFT);
    }

    private static Setup setup(JudgedKitchen kitchen, Knowledge knowledge) {
        AdapterSettings adapter = kitchen.scenario().bowlAdapter();
        List<ProbeSetup> probes = new ArrayList<>();
        probes.add(EngineProgram.probe(BatchRun.BOWL, Role.BOWL, adapter));
        if (hearsBath(knowledge)) probes.add(EngineProgram.probe(BatchRun.BATH, Role.BATH, AdapterSettings.USUAL_BATH));
        return new Setup(
                kitchen.recipe(),
                bowl(kitchen, knowledge),
                probes,
                REACTION,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Origin.SIMULATED,
                Approach.TOUCHES_WHERE_UNSURE,
                OptionalDouble.empty(),
                Beginning.WHOLE,
                Optional.empty());
    }

    private static boolean hearsBath(Knowledge knowledge) {
        return knowledge.told() == Knowledge.Told.BOWL_AND_BATH;
    }

    private static Bowl bowl(JudgedKitchen kitchen, Knowledge knowledge) {
        Bowl known = kitchen.scenario().bowl();
        if (knowledge.told() != Knowledge.Told.NOTHING) {
            return new Bowl(known.id(), known.material(), known.amountGrams(), knowledge.learned());
        }
        return new Bowl(known.id(), BowlMaterial.UNKNOWN, OptionalDouble.empty(), knowledge.learned());
    }

    @Override
    public Heard hear(Input input) {
        boolean bath = input instanceof Sample sample && sample.probe().equals(BatchRun.BATH);
        if (bath && !hearsBath(knowledge)) return Rival.silent(this);
        Heard heard = engine.hear(input);
        return new Heard(new EngineRival((EngineProgram) heard.after(), knowledge), heard.events());
    }

    @Override
    public Optional<Said> said() {
        return engine.state()
                .forecast()
                .map(f -> new Said(
                        f.ifLifted().celsius(),
                        f.ifLifted().lowerCelsius(),
                        f.ifLifted().upperCelsius()));
    }

    @Override
    public Optional<Place> place() {
        return Optional.of(engine.state().batch().place());
    }

    @Override
    public Optional<Phase> phase() {
        return Optional.of(engine.state().batch().phase());
    }

    /** What this batch leaves to the next of the same bowl, as the program keeps it. */
    Optional<LearnedCoast> learned() {
        return engine.state().coasting().learned();
    }
}
