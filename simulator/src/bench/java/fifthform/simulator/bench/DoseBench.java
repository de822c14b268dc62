package fifthform.simulator.bench;

import fifthform.curves.engine.State;
import fifthform.curves.learning.HeatCount;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.recipe.Recipe;
import fifthform.simulator.bench.Fleet.Advice;
import fifthform.simulator.scenario.Scenario;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * How hot the chocolate of simulated makers really gets after it has been cooled: for each batch of the home and of the
 * careless fleet whose heat counts, its maker and its dose, in kelvin from the published limit. What it prints is
 * {@code learning/doses.csv} among the resources of the tests.
 *
 * <p>{@code java … DoseBench BATCHES FIRST} goes through so many of each (500 by default) from that number on (40000).
 */
public final class DoseBench {
    private DoseBench() {}

    public static void main(String[] arguments) {
        long batches = arguments.length > 0 ? Long.parseLong(arguments[0]) : 500;
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : 40_000;
        System.out.println("# Made by DoseBench " + batches + " " + first + ": invented kitchens, no real maker.");
        System.out.println("fleet,maker,dose_from_limit_k");
        for (String fleet : List.of(Fleet.HOME, "careless")) {
            Fleet drawn = Fleet.builtIn(fleet);
            LongStream.range(first, first + batches)
                    .parallel()
                    .mapToObj(number -> line(drawn, number))
                    .flatMap(Optional::stream)
                    .toList()
                    .forEach(System.out::println);
        }
    }

    private static Optional<String> line(Fleet fleet, long number) {
        Scenario scenario = fleet.draw(number);
        Recipe recipe = RecipeShelf.recipe(scenario.chocolate());
        Moment moment = fleet.beginning(number, Advice.engine(RecipeShelf::recipe));
        Batch batch = new Batch(scenario.kitchen());
        HeatCount heat = HeatCount.start(HeatScale.of(recipe));
        var last = moment.at().plus(Batch.LONGEST);
        while (!moment.maker().done() && moment.at().isBefore(last)) {
            moment = batch.next(moment).after();
            State state = ((EngineProgram) moment.program()).state();
            heat = heat.with(recipe, state);
        }
        if (heat.leftOut(recipe).isPresent()) return Optional.empty();
        double over = heat.dose().orElseThrow().equivalentCelsius()
                - recipe.meltOut().limitCelsius();
        return Optional.of(String.format(Locale.ROOT, "%s,%s,%.2f", fleet.id(), maker(fleet, number), over));
    }

    private static String maker(Fleet fleet, long number) {
        return fleet.text(number)
                .lines()
                .filter(line -> line.matches("maker\\s*=.*"))
                .findFirst()
                .map(line -> line.replaceAll("#.*", "").replaceAll(".*=", "").strip())
                .orElse("");
    }
}
