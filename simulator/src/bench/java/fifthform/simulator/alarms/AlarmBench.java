package fifthform.simulator.alarms;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import fifthform.simulator.bench.Fleet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;

/**
 * The alarm system beside the goals it is measured by, over many batches of the home fleet, in every fifth of which the
 * maker takes no notice of the program.
 *
 * <p>Then the same over the careless fleet, which heats too far: there a melt-out can be missed.
 *
 * <p>{@code java … AlarmBench BATCHES FIRST} goes through so many of each ({@code -Dbatches}, 10,000 by default) from that
 * number on (0).
 */
public final class AlarmBench {
    private static final int USUAL_BATCHES = 10_000;
    private static final Map<String, Recipe> RECIPES = new ConcurrentHashMap<>();

    private AlarmBench() {}

    public static void main(String[] arguments) {
        long batches = arguments.length > 0 ? Long.parseLong(arguments[0]) : Long.getLong("batches", USUAL_BATCHES);
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : 0;
        for (String fleet : List.of(Fleet.HOME, "careless")) {
            AlarmRun run = new AlarmRun(Fleet.builtIn(fleet), AlarmBench::recipe);
            AlarmTally tally = AlarmTally.of(
                    run, LongStream.range(first, first + batches).boxed().toList());
            System.out.println("fleet " + fleet);
            System.out.print(tally.table());
            System.out.println("batches with a missed melt-out: " + tally.missedIn());
            System.out.println();
        }
    }

    private static Recipe recipe(String id) {
        return RECIPES.computeIfAbsent(id, AlarmBench::read);
    }

    private static Recipe read(String id) {
        try (InputStream in = AlarmBench.class.getResourceAsStream("/recipes/" + id + ".recipe")) {
            return RecipeText.parse(id, new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .fold(recipe -> recipe, problems -> {
                        throw new IllegalStateException(problems.toString());
                    });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
