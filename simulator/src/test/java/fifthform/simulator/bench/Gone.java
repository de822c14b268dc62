package fifthform.simulator.bench;

import fifthform.curves.engine.Engine;
import fifthform.curves.engine.Event;
import fifthform.curves.engine.State;
import fifthform.curves.engine.Step;
import fifthform.curves.input.AlarmId;
import fifthform.curves.input.Input;
import fifthform.curves.recipe.Recipe;
import fifthform.curves.review.Tally;
import fifthform.curves.review.Verdict;
import fifthform.curves.setup.Setup;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.bowl.Forms;
import fifthform.simulator.device.Truth;
import fifthform.simulator.scenario.Expected.Cooled;
import fifthform.simulator.scenario.Expected.Tempered;
import fifthform.simulator.scenario.Landed;
import fifthform.simulator.scenario.Scenario;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * A scenario gone through with the engine, and what its file may say of it.
 *
 * @param outcome how it really went
 * @param landed where the hottest of the rewarm lay
 * @param cooled how far the cooling went
 * @param forms the crystals of the whole bowl in the end
 * @param verdict what the program says of it in the end
 * @param coolestPouringCelsius the coolest of the bulk while it was poured, at the end
 * @param raised every alarm that was raised
 */
record Gone(
        Outcome outcome,
        Landed landed,
        Cooled cooled,
        Forms forms,
        Verdict verdict,
        double coolestPouringCelsius,
        Set<AlarmId> raised) {
    static Gone through(Scenario scenario, long seed) {
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Set<AlarmId> raised = EnumSet.noneOf(AlarmId.class);
        Listening program = new Listening(EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS));
        BatchRecord batch = BatchRun.run(scenario, seed, program, Presses.PRESSED);
        for (Event event : batch.events()) {
            if (event instanceof Event.AlarmRaised alarm) raised.add(alarm.alarm());
        }
        Outcome outcome = batch.outcome();
        return new Gone(
                outcome,
                Landed.at(outcome.highestAfterCoolCelsius(), recipe),
                Cooled.at(outcome.lowestCoolCelsius().orElse(Double.POSITIVE_INFINITY), recipe),
                batch.truth().get(batch.truth().size() - 1).forms().orElseThrow(),
                program.tally.verdict(recipe),
                coolestOfTheEnd(batch, scenario.habits().pouring()),
                raised);
    }

    Tempered tempered() {
        return Tempered.at(forms.stableFraction());
    }

    private static double coolestOfTheEnd(BatchRecord batch, Duration lasting) {
        List<Truth> truth = batch.truth();
        Instant from = truth.get(truth.size() - 1).at().minus(lasting);
        return truth.stream()
                .filter(each -> !each.at().isBefore(from))
                .mapToDouble(Truth::bulkCelsius)
                .min()
                .orElseThrow();
    }

    /** The engine, and how it would sum up. */
    private static final class Listening implements Function<Input, List<Event>> {
        private final Setup setup;
        private State state;
        private Tally tally;

        Listening(EngineProgram program) {
            setup = program.setup();
            state = program.state();
            tally = Tally.start(state);
        }

        @Override
        public List<Event> apply(Input input) {
            Step step = Engine.step(setup, state, input);
            tally = tally.with(setup.recipe(), state, step);
            state = step.after();
            return step.events();
        }
    }
}
