package fifthform.simulator.training;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.setup.LearnedCoast;
import fifthform.simulator.bench.Batch;
import fifthform.simulator.bench.EngineProgram;
import fifthform.simulator.bench.BatchRun;
import fifthform.simulator.bench.Fleet;
import fifthform.simulator.bench.Moment;
import fifthform.simulator.maker.Luck;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * Holds what {@link EarlierBatches} says of a bowl against what the engine has learned of it after one batch, in the same
 * kitchens: {@code LearnedBench [kitchens] [seed]}.
 */
public final class LearnedBench {
    private LearnedBench() {}

    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        TrainingKitchens kitchens = new TrainingKitchens(args.length > 1 ? Long.parseLong(args[1]) : 1);
        Fleet fleet = Fleet.builtIn(TrainingKitchens.FLEET);
        DescriptiveStatistics error = new DescriptiveStatistics();
        DescriptiveStatistics inSpreads = new DescriptiveStatistics();
        DescriptiveStatistics spread = new DescriptiveStatistics();
        for (int n = 0; n < count; n++) {
            Scenario scenario = fleet.draw(n).madeBy(MakerKind.CAREFUL);
            Recipe recipe = kitchens.recipeOf(scenario);
            EngineProgram program = engine(scenario, recipe, n);
            Optional<LearnedCoast> truth = EarlierBatches.exact(scenario.kitchen(), 0.9, recipe.work().range().lowCelsius());
            int lifts = program.state().coasting().coast().liftsSeen();
            if (truth.isEmpty() || lifts == 0) continue;
            double off = program.state().coasting().coast().logSeconds() - Math.log(truth.get().coastSeconds());
            error.addValue(off);
            spread.addValue(program.state().coasting().coast().logSpread());
            inSpreads.addValue(off / program.state().coasting().coast().logSpread());
        }
        System.out.printf(Locale.ROOT, "%d of %d taught; engine's coast time by the simulated one, as a logarithm: mean %.3f, sd %.3f,"
                + " 5 %% %.2f, median %.2f, 95 %% %.2f; engine's own spread %.3f; error in spreads sd %.2f%n",
                error.getN(), count, error.getMean(), error.getStandardDeviation(), error.getPercentile(5),
                error.getPercentile(50), error.getPercentile(95), spread.getMean(), inSpreads.getStandardDeviation());
    }

    private static EngineProgram engine(Scenario scenario, Recipe recipe, long number) {
        EngineProgram first = EngineProgram.beginning(scenario, recipe, BatchRun.BEGINS);
        Moment moment = Batch.beginning(scenario, new Luck(9).branch(number), first);
        Batch batch = new Batch(scenario.kitchen());
        while (!moment.maker().done() && moment.steps() < 7200) moment = batch.next(moment).after();
        return (EngineProgram) moment.program();
    }
}
