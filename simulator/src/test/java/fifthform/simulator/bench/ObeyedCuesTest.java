package fifthform.simulator.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.AlarmId;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.Approach;
import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Correction;
import fifthform.curves.setup.Origin;
import fifthform.curves.setup.ProbeSetup;
import fifthform.curves.setup.Role;
import fifthform.curves.setup.Setup;
import fifthform.simulator.scenario.Scenario;
import fifthform.simulator.scenario.Scenarios;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole simulated batches with the real engine: where the peak of the rewarm lands for a maker who obeys the cues.
 * {@code -Dbatches=40} makes the table of DEVELOPERS.md again; here a quarter of it is held to floors.
 */
class ObeyedCuesTest {
    private static final int BATCHES = Integer.getInteger("batches", 10);

    @ParameterizedTest(name = "{0}, keys {1}: at least {2} of ten in range, {3} at most 0.3 K over")
    @CsvSource({
        "first-light, PRESSED, 9, 10",
        "first-light, FORGOTTEN, 9, 10",
        "glass-bowl, PRESSED, 6, 9",
        "glass-bowl, FORGOTTEN, 5, 7",
        "milk, PRESSED, 9, 10",
        "milk, FORGOTTEN, 9, 10",
        "unplugged, PRESSED, 9, 10",
        "unplugged, FORGOTTEN, 9, 10"
    })
    void thePeakLandsInTheWorkingRange(String id, BatchRun.Presses presses, int inRange, int hardlyOver) {
        Tally tally = batches(id, presses);
        System.out.println(id + " " + presses + ": " + tally + " of " + BATCHES);
        assertTrue(10 * tally.inRange >= inRange * BATCHES, id + " " + presses + ": " + tally);
        assertTrue(10 * tally.hardlyOver >= hardlyOver * BATCHES, id + " " + presses + ": " + tally);
        assertEquals(0, tally.meltOut);
    }

    @ParameterizedTest
    @CsvSource({"PRESSED", "FORGOTTEN"})
    void whoTakesNoNoticeReachesMeltOutAndIsToldSo(BatchRun.Presses presses) {
        Tally tally = batches("own-way", presses);
        assertEquals(0, tally.hardlyOver);
        assertEquals(BATCHES, tally.meltOut);
    }

    /** How many batches ended how. */
    private static final class Tally {
        private int inRange;
        private int hardlyOver;
        private int meltOut;

        @Override
        public String toString() {
            return inRange + " in range, " + hardlyOver + " at most 0.3 K over, " + meltOut + " melt-out";
        }
    }

    private static Tally batches(String id, BatchRun.Presses presses) {
        Scenario scenario = Scenarios.builtIn().find(id).fold(s -> s, problems -> {
            throw new IllegalStateException(problems.toString());
        });
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Tally tally = new Tally();
        for (long seed = 1; seed <= BATCHES; seed++) {
            Run run = new Run(setup(scenario, recipe));
            BatchRecord batch = BatchRun.run(scenario, seed, run::step, presses);
            double peak = batch.outcome().highestAfterCoolCelsius().orElseThrow();
            if (recipe.work().range().contains(peak)) tally.inRange++;
            if (peak <= recipe.work().range().highCelsius() + 0.3) tally.hardlyOver++;
            if (run.meltOut) tally.meltOut++;
        }
        return tally;
    }

    private static final class Run {
        private final Setup setup;
        private State state;
        private boolean meltOut;

        Run(Setup setup) {
            this.setup = setup;
            this.state = Engine.start(setup, BatchRun.BEGINS);
        }

        List<Event> step(fifthform.curves.input.Input input) {
            Step step = Engine.step(setup, state, input);
            state = step.after();
            meltOut |= step.events().stream()
                    .anyMatch(e -> e instanceof Event.AlarmRaised raised && raised.alarm() == AlarmId.MELT_OUT);
            return step.events();
        }
    }

    private static Setup setup(Scenario scenario, Recipe recipe) {
        List<ProbeSetup> probes = List.of(
                new ProbeSetup(BatchRun.BOWL, Role.BOWL, "text-lines", "bench", Correction.UNCHECKED, 4),
                new ProbeSetup(BatchRun.BATH, Role.BATH, "text-lines", "bench", Correction.UNCHECKED, 4));
        return new Setup(
                recipe,
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
