package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.recipe.Recipe;
import fifthform.monitor.catalogue.KnownRecipe;
import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.settings.LastStart;
import fifthform.monitor.settings.Units;
import fifthform.monitor.start.SeenProbe;
import fifthform.monitor.start.StartChoice;
import fifthform.monitor.start.StartChoice.Way;
import fifthform.monitor.start.StartStock;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The three lines at a terminal, and the start that asks none. */
class StartQuestionsTest {
    private static final SeenProbe PROBE = new SeenProbe("/dev/ttyDemo0", "demo adapter", "Never checked.", false);
    private static final LastStart LAST = new LastStart(
            Optional.of("/dev/ttyDemo0"), Optional.of("milk"), Optional.of("demo glass"), OptionalDouble.of(600));

    @TempDir
    Path home;

    private final StringWriter out = new StringWriter();

    private StartChoice answered(LastStart last, List<SeenProbe> probes, String... lines) throws Refusal {
        List<Recipe> recipes =
                Recipes.load(home).known().stream().map(KnownRecipe::recipe).toList();
        BufferedReader in = new BufferedReader(new StringReader(String.join("\n", lines) + "\n"));
        return new StartQuestions(new PlanQuestions(in, new PrintWriter(out, true)), new PrintWriter(out, true))
                .ask(new StartStock(recipes, List.of(), last, Optional.empty(), Units.CELSIUS), probes);
    }

    @Test
    void enterThreeTimesIsAsLastTime() throws Refusal {
        assertEquals(
                new StartChoice(
                        Way.PROBE,
                        "milk",
                        Optional.of("demo glass"),
                        OptionalDouble.of(600),
                        Optional.of("/dev/ttyDemo0")),
                answered(LAST, List.of(PROBE), "", "", ""));
        assertTrue(out.toString().contains("Never checked."), out.toString());
        assertTrue(out.toString().contains("steam scald"), out.toString());
    }

    @Test
    void whatCannotBeIsAskedAgain() throws Refusal {
        assertEquals(
                new StartChoice(
                        Way.PROBE,
                        "dark",
                        Optional.of("big steel"),
                        OptionalDouble.of(800),
                        Optional.of("/dev/ttyDemo0")),
                answered(LastStart.NONE, List.of(PROBE), "darkest", "dark", "steel 7", "big steel, 800 g", ""));
        assertTrue(out.toString().contains("Not one of these: "), out.toString());
        assertTrue(out.toString().contains("50 to 20000"), out.toString());
    }

    @Test
    void withoutAProbeThereIsPractice() throws Refusal {
        assertEquals(
                Way.PRACTICE, answered(LastStart.NONE, List.of(), "", "", "").way());
        assertTrue(out.toString().contains("No probe was found"), out.toString());
    }

    @Test
    void whoSaysNoMoreIsNotGuessedAt() {
        assertThrows(Refusal.class, () -> answered(LastStart.NONE, List.of(PROBE), "dark"));
    }

    @Test
    void asLastNeedsALastTime() {
        Said.by("watch", "--as-last", "--screen", "lines", "--data", home.toString())
                .refuses(1, "There was no batch with a real probe yet", "Nothing was started.", "Leave --as-last out.");
    }
}
