package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import fifthform.curves.recipe.Recipe;
import fifthform.curves.recipe.RecipeText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecipesFromCommandTest {
    @TempDir
    Path home;

    private Said from(String words) {
        return Said.by(
                Stream.concat(Stream.of("recipes", "from", "--data", home.toString()), Stream.of(words.split(" ")))
                        .toArray(String[]::new));
    }

    @Test
    void theTwoIngredientDarkIsWorkedOutWithSourcesAndBands() {
        Said said = from("--cacao 70 --sugar 30 --why");
        assertEquals(0, said.exit(), said.err());
        Recipe recipe = RecipeText.parse("out", said.out()).fold(read -> read, problems -> fail(problems.toString()));
        assertEquals(31.5, recipe.work().range().lowCelsius());
        assertEquals(0.378, recipe.composition().cocoaButterFraction());
        assertTrue(said.out().contains("published chocolate cookbook"), said.out());
        assertTrue(said.out().contains("#   work: 29 to 33 C"), said.out());
        assertTrue(said.out().contains("dT = -8.5 ln(1/(1 - x))"), said.out());
        assertTrue(said.err().contains("Mind: Without added butter"), said.err());
    }

    @Test
    void jsonGivesALineATargetWithItsBand() {
        List<String> lines = from("--cocoa-butter 27 --milk-fat 5.5 --sugar 45 --json")
                .out()
                .lines()
                .toList();
        assertEquals(7, lines.size(), lines::toString);
        assertTrue(lines.get(2).contains("\"band_low_c\":28.8") && lines.get(2).contains("\"why\""), lines.get(2));
        List<String> shown = Said.by("recipes", "show", "dark", "--json", "--data", home.toString())
                .out()
                .lines()
                .toList();
        assertEquals(8, shown.size(), shown::toString);
    }

    @Test
    void writtenOnceItIsKnownAndNeverOverwritten() throws Exception {
        assertEquals(0, from("--cacao 72 --sugar 28 --write evening-72").exit());
        String before = Files.readString(home.resolve("recipes/evening-72.recipe"));
        assertTrue(Said.by("recipes", "--data", home.toString()).out().contains("evening-72"));
        Said again = from("--cacao 80 --sugar 20 --write evening-72");
        assertEquals(4, again.exit(), again.err());
        assertTrue(again.err().contains("is there already"), again.err());
        assertEquals(before, Files.readString(home.resolve("recipes/evening-72.recipe")));
    }

    @Test
    void whatIsShownCanBeCheckedAndOwnTargetsAreHeldAgainstThePrints() throws Exception {
        String shown =
                Said.by("recipes", "show", "dark", "--data", home.toString()).out();
        Path own = home.resolve("own.recipe");
        Files.writeString(own, shown);
        Said good = Said.by("recipes", "check", own.toString());
        assertEquals(0, good.exit(), good.err());
        assertFalse(good.err().contains("Mind"), good.err());
        Files.writeString(own, shown.replace("cool low = 27 C", "cool low = 20 C"));
        Said odd = Said.by("recipes", "check", own.toString());
        assertEquals(0, odd.exit(), odd.err());
        assertTrue(odd.err().contains("Mind: cool 20 to 28 °C lies below everything printed"), odd.err());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --cacao 80 --sugar 30                                           | make 110 %
            --sugar 30                                                      | nothing to temper
            --cocoa-butter 3 --other-fat 30 --other-fat-kind lauric         | needs no tempering
            --cocoa-butter 30 --other-fat 3 --other-fat-kind wax            | Say one of: like-butter, soft, lauric
            --cocoa-butter 30 --write Evening                               | cannot be used in commands
            """)
    void whatCannotBeIsRefused(String words, String says) {
        Said said = from(words);
        assertEquals(2, said.exit(), said.err());
        assertTrue(said.err().contains(says), said.err());
    }
}
