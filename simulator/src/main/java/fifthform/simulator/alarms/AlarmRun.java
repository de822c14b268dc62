package fifthform.simulator.alarms;

import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.Batch.Passed;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.bench.EngineProgram;
import fifthform.simulator.bench.Fleet;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.maker.Acts;
import fifthform.simulator.maker.KitchenView;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import java.time.Instant;
import java.util.function.Function;

/** One batch of a fleet, with the alarms it raises counted. In every fifth the maker takes no notice of the program. */
public final class AlarmRun {
    private static final int DEAF_EVERY = 5;

    private final Fleet fleet;
    private final Function<String, Recipe> recipes;

    /** @param recipes by the names that scenarios have for them */
    public AlarmRun(Fleet fleet, Function<String, Recipe> recipes) {
        this.fleet = fleet;
        this.recipes = recipes;
    }

    AlarmFigures figures(long number) {
        Scenario drawn = fleet.draw(number);
        Scenario scenario = number % DEAF_EVERY == DEAF_EVERY - 1 ? drawn.madeBy(MakerKind.OWN_WAY) : drawn;
        return figures(scenario, number, new Luck(fleet.seed()).branch(number).branch(1));
    }

    /** The alarms of this scenario's batch. */
    AlarmFigures figures(Scenario scenario, long number, Luck luck) {
        Recipe recipe = recipes.apply(scenario.chocolate());
        EngineProgram engine = EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS);
        Moment moment = Batch.beginning(scenario, luck, SeenByMaker.beginning(engine));
        Batch batch = new Batch(scenario.kitchen());
        AlarmWatch watch = new AlarmWatch(scenario, recipe);
        Instant last = moment.at().plus(Batch.LONGEST);
        while (!moment.maker().done() && moment.at().isBefore(last)) {
            Acts.Probe probe = moment.maker()
                    .next(new KitchenView(moment.at(), moment.shownCelsius()))
                    .acts()
                    .probe();
            Passed passed = batch.next(moment);
            watch.saw(moment, passed.after(), probe, passed.events());
            moment = passed.after();
        }
        return watch.figures(number);
    }
}
