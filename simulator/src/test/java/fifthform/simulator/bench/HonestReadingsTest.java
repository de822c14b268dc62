package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.engine.Tracks;
import fifthform.curves.input.Input;
import fifthform.curves.input.Sample;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.curves.signal.Doubt;
import fifthform.simulator.device.AdapterSettings;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole simulated batches read by honest adapters, fine and coarse, quick and slow: not one reading of the bowl is
 * doubted, and none of the bath is laid to its probe. {@code -Dbatches=3} looks at the 180 batches of DEVELOPERS.md.
 */
class HonestReadingsTest {
    private static final int BATCHES = Integer.getInteger("batches", 1);

    private static final List<AdapterSettings> ADAPTERS = List.of(
            new AdapterSettings(0.01, 0.03, 0, Duration.ofMillis(500), List.of()),
            new AdapterSettings(0.05, 0.1, 0, Duration.ofMillis(250), List.of()),
            new AdapterSettings(0.25, 0.03, 0, Duration.ofMillis(250), List.of()),
            new AdapterSettings(0.25, 0.15, 0, Duration.ofMillis(1000), List.of()),
            new AdapterSettings(1, 0.05, 0, Duration.ofMillis(1000), List.of()),
            new AdapterSettings(1, 0.3, 0, Duration.ofMillis(2000), List.of()));

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "glass-bowl", "milk", "own-way", "unplugged"})
    void raiseNoDoubt(String id) {
        Scenario scenario = Scenarios.builtIn().find(id).fold(s -> s, problems -> {
            throw new IllegalStateException(problems.toString());
        });
        Map<Doubt, Integer> doubted = new EnumMap<>(Doubt.class);
        List<String> first = new ArrayList<>();
        int readings = 0;
        int batches = 0;
        for (AdapterSettings adapter : ADAPTERS) {
            Scenario read = readBy(scenario, adapter);
            for (long seed = 1; seed <= BATCHES; seed++) {
                for (BatchRun.Presses presses : BatchRun.Presses.values()) {
                    Run run = new Run(setup(scenario));
                    BatchRun.run(read, seed, run::step, presses);
                    run.doubted.forEach((doubt, count) -> doubted.merge(doubt, count, Integer::sum));
                    String batch = " " + adapter + " " + seed + presses;
                    run.first.forEach((doubt, at) -> first.add(doubt + " " + at + batch));
                    readings += run.readings;
                    batches++;
                }
            }
        }
        System.out.println(id + ": " + batches + " batches, " + readings + " readings, doubted " + doubted);
        assertTrue(readings > 500 * batches);
        assertEquals(Map.of(), doubted, first.toString());
    }

    private static final class Run {
        private final Setup setup;
        private final Map<Doubt, Integer> doubted = new EnumMap<>(Doubt.class);
        private final Map<Doubt, String> first = new EnumMap<>(Doubt.class);
        private int readings;
        private State state;

        Run(Setup setup) {
            this.setup = setup;
            this.state = Engine.start(setup, BatchRun.BEGINS);
        }

        List<Event> step(Input input) {
            Step step = Engine.step(setup, state, input);
            state = step.after();
            if (input instanceof Sample) {
                readings++;
                state.tracks().entries().forEach(this::look);
            }
            return step.events();
        }

        /** Water may move as chocolate cannot; of its probe only the instrument is judged. */
        private void look(Tracks.Entry entry) {
            entry.track()
                    .doubt()
                    .filter(doubt -> entry.role() == Role.BOWL || doubt.isOfInstrument())
                    .ifPresent(doubt -> {
                        doubted.merge(doubt, 1, Integer::sum);
                        first.putIfAbsent(doubt, entry.probe() + " at " + state.at() + ", " + entry.judgement());
                    });
        }
    }

    private static Scenario readBy(Scenario s, AdapterSettings adapter) {
        AdapterSettings failing = new AdapterSettings(
                adapter.resolutionKelvin(),
                adapter.noiseKelvin(),
                adapter.offsetKelvin(),
                adapter.interval(),
                s.bowlAdapter().faults());
        return new Scenario(
                s.id(),
                s.title(),
                s.about(),
                s.demo(),
                s.chocolate(),
                s.seed(),
                s.kitchen(),
                s.begins(),
                s.maker(),
                s.habits(),
                failing,
                s.expected());
    }

    private static Setup setup(Scenario scenario) {
        List<ProbeSetup> probes = List.of(
                new ProbeSetup(BatchRun.BOWL, Role.BOWL, "text-lines", "bench", Correction.UNCHECKED, 4),
                new ProbeSetup(BatchRun.BATH, Role.BATH, "text-lines", "bench", Correction.UNCHECKED, 4));
        return new Setup(
                RecipeShelf.recipe(scenario.chocolate()),
                scenario.bowl(),
                probes,
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
