package fifthform.simulator.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.junit.jupiter.api.Test;

/**
 * The alarm system over a few dozen batches of the fleets that {@code AlarmBench} goes through by the ten thousand; here
 * its goals are held with what so few batches allow. {@code -Dbatches=400} takes more.
 */
class AlarmGoalsTest {
    private static final long BATCHES = Long.getLong("batches", 40);
    private static final Map<String, Recipe> RECIPES = new ConcurrentHashMap<>();

    private static AlarmTally tally(String fleet) {
        AlarmRun run = new AlarmRun(Fleet.builtIn(fleet), AlarmGoalsTest::recipe);
        AlarmTally tally =
                AlarmTally.of(run, LongStream.range(0, BATCHES).boxed().toList());
        System.out.println("fleet " + fleet + "\n" + tally.table());
        return tally;
    }

    static Recipe recipe(String id) {
        return RECIPES.computeIfAbsent(id, AlarmGoalsTest::read);
    }

    private static Recipe read(String id) {
        try (InputStream in = AlarmGoalsTest.class.getResourceAsStream("/recipes/" + id + ".recipe")) {
            return RecipeText.parse(id, new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .fold(recipe -> recipe, problems -> {
                        throw new IllegalStateException(problems.toString());
                    });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void atHomePhaseAndWarningsAreRightAndHardlyAnythingChatters() {
        AlarmTally home = tally("home");
        assertEquals(List.of(), home.missedIn());
        assertTrue(home.phaseRightFraction() >= 0.90, "phase right " + home.phaseRightFraction());
        assertTrue(home.falseMeltOutsPerHour() <= 0.3, "false " + home.falseMeltOutsPerHour());
        assertTrue(home.chatteringBatchesFraction() <= 0.1, "chatter " + home.chatteringBatchesFraction());
    }

    @Test
    void whoHeatsTooFarIsAlwaysTold() {
        AlarmTally careless = tally("careless");
        assertTrue(careless.meltOuts() >= BATCHES / 4, "melt-outs to tell of: " + careless.meltOuts());
        assertEquals(List.of(), careless.missedIn());
        assertTrue(careless.phaseRightFraction() >= 0.85, "phase right " + careless.phaseRightFraction());
    }
}
