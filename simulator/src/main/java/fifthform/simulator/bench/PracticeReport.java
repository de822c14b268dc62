package fifthform.simulator.bench;

import fifthform.curves.check.Require;
import fifthform.curves.engine.Event;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.BatchRun.Presses;
import fifthform.simulator.bench.ProgramAtWork.Said;
import fifthform.simulator.device.Truth;
import fifthform.simulator.scenario.MakerKind;
import fifthform.simulator.scenario.Scenario;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;

/**
 * One scenario gone through several times, each time with other luck, through adapters, bytes and decoder.
 *
 * @param scenario its id
 * @param maker who tempered
 * @param chocolate the recipe's id
 * @param endings how each batch ended, in the order of their seeds
 * @param summary all of them together
 */
public record PracticeReport(
        String scenario, MakerKind maker, String chocolate, List<Ending> endings, Summary summary) {
    public PracticeReport {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(maker, "maker");
        Objects.requireNonNull(chocolate, "chocolate");
        endings = List.copyOf(endings);
        Objects.requireNonNull(summary, "summary");
    }

    /**
     * Goes through the scenario with its own maker; {@link Scenario#madeBy} gives it to another.
     *
     * @param times how often, 1 to 100 000; the first with the scenario's own seed, each next with one more
     * @param advice what advises the maker
     */
    public static PracticeReport of(Scenario scenario, int times, Fleet.Advice advice) {
        Require.within(times, 1, 100_000, "times");
        List<Ending> endings = LongStream.range(0, times)
                .mapToObj(i -> run(scenario, scenario.seed() + i, advice))
                .toList();
        return new PracticeReport(scenario.id(), scenario.maker(), scenario.chocolate(), endings, Summary.of(endings));
    }

    /** One batch with this luck. */
    public static Ending run(Scenario scenario, long seed, Fleet.Advice advice) {
        Recipe recipe = advice.recipe(scenario);
        ProgramAtWork program = new ProgramAtWork(advice.program(scenario, recipe));
        BatchRecord batch = BatchRun.run(scenario, seed, program, Presses.PRESSED);
        return ending(batch, program.said(), recipe);
    }

    /** What was said comes before what was seen at the same time: a lift answers a forecast made before it. */
    private static Ending ending(BatchRecord batch, List<Said> said, Recipe recipe) {
        BatchWatch watch = new BatchWatch(recipe);
        int nextSaid = 0;
        int nextEvent = 0;
        for (Truth truth : batch.truth()) {
            while (nextSaid < said.size() && said.get(nextSaid).at().isBefore(truth.at())) {
                watch.forecast(said.get(nextSaid++).turnIfLiftedCelsius());
            }
            watch.saw(truth.at(), truth.bulkCelsius(), truth.spot());
            List<Event> events = batch.events();
            while (nextEvent < events.size() && !events.get(nextEvent).at().isAfter(truth.at())) {
                watch.heard(events.get(nextEvent++));
            }
        }
        return watch.ending();
    }
}
