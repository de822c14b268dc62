package fifthform.curves.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RecipeTextTest {
    private static final String DARK = BuiltIn.text("dark");

    static Stream<String> ids() {
        return BuiltIn.IDS.stream();
    }

    @Test
    void readsEveryValue() {
        Recipe dark = BuiltIn.recipe("dark");
        assertEquals("dark", dark.id());
        assertEquals(new Composition(0.38, 0, 0.30, 0.32), dark.composition());
        assertEquals(new PhaseTarget(new CelsiusRange(45, 50), Duration.ofMinutes(5)), dark.melt());
        assertEquals(new PhaseTarget(new CelsiusRange(27, 28), Duration.ofMinutes(6)), dark.cool());
        assertEquals(new PhaseTarget(new CelsiusRange(31, 32), Duration.ZERO), dark.work());
        assertEquals(new MeltOut(32.5, 33.8), dark.meltOut());
        assertEquals(55, dark.scorchCelsius());
        assertEquals(45, dark.rewarmBathCelsius());
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyNumberOfABuiltInRecipeNamesItsSource(String id) {
        List<String> numbers = Stream.of(RecipeKey.values())
                .filter(key -> key.kind.isNumber())
                .map(RecipeKey::word)
                .toList();
        assertEquals(
                numbers, BuiltIn.recipe(id).sources().stream().map(Source::key).toList());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsWrittenReadsTheSame(long seed) {
        Recipe recipe = RandomRecipe.from(new SplittableRandom(seed));
        String text = RecipeText.write(recipe);
        Recipe again = RecipeText.parse("x", text).fold(read -> read, problems -> fail("seed " + seed + problems));
        assertEquals(recipe, again, "seed " + seed);
        assertEquals(text, RecipeText.write(again), "seed " + seed);
    }

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed + 1).limit(200);
    }

    @Test
    void takesFahrenheitSecondsMarksOfDegreesAndWindowsLines() {
        String text = DARK.replace("work low = 31 C", "work low = 87.8 °F")
                .replace("melt hold = 5 min", "Melt  Hold=300s")
                .replace("warn = 32.5 C", "warn = 32.5°C")
                .replace("\n", "\r\n");
        Recipe recipe = RecipeText.parse("x", "\uFEFF" + text).fold(read -> read, problems -> fail("" + problems));
        assertEquals(31, recipe.work().range().lowCelsius());
        assertEquals(Duration.ofMinutes(5), recipe.melt().dwell());
        assertEquals(32.5, recipe.meltOut().warnCelsius());
    }

    /** Each row: what stands in the dark recipe, what is put in its place, words that the one problem must hold. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "work low = 31 C       | work low = 33 C         | line 17 | \"work low\" (33 C) is not below",
                "work low = 31 C       | work low = 27.9 C       | line 15 | \"cool high\" (28 C) is not below",
                "work low = 31 C       | work lov = 31 C         | line 17 | Did you mean \"work low\"?",
                "work low = 31 C       | work low = warm         | line 17 | not a number",
                "work low = 31 C       | work low = 31,5 C       | line 17 | after a point: 31.5 C",
                "work low = 31 C       | work low = 31           | line 17 | needs its unit: C or F",
                "work low = 31 C       | work low = 31 min       | line 17 | needs its unit: C or F",
                "work low = 31 C       | work low = 310 C        | line 17 | from -20 to 150 C",
                "work low = 31 C       | work low =              | line 17 | has no value",
                "work low = 31 C       | work low 31 C           | line 17 | no equals sign",
                "melt hold = 5 min     | melt hold = 5 C         | line 13 | needs its unit: min or s",
                "melt hold = 5 min     | melt hold = 5000 min    | line 13 | from 0 to 86400 s",
                "warn = 32.5 C         | warn = 31.9 C           | line 18 | \"work high\" (32 C) is not at most",
                "warn = 32.5 C         | warn = 33.8 C           | line 20 | \"warn\" (33.8 C) is not below",
                "melt-out = 33.8 C     | melt-out = 45.1 C       | line 21 | \"melt-out\" (45.1 C) is not below",
                "scorch = 55 C         | scorch = 49 C           | line 12 | \"melt high\" (50 C) is not at most",
                "bath = 45 C           | bath = 31.5 C           | line 18 | \"work high\" (32 C) is not below",
                "bath = 45 C           | bath = 60 C             | line 23 | \"bath\" (60 C) is not at most",
                "sugar = 30 %          | sugar = 31 %            | x       | make 101 %",
                "sugar = 30 %          | sugar = 30 g            | line 8  | not a number with its unit",
                "id = dark             | id = Dark 70            | line 2  | lower-case letters",
            })
    void saysWhatIsWrongAndWhere(String right, String wrong, String where, String words) {
        assertTrue(DARK.contains(right), right);
        List<String> said = problems(DARK.replaceFirst(right + "(?= |\n)", wrong));
        assertEquals(1, said.size(), said::toString);
        assertTrue(said.get(0).contains(where) && said.get(0).contains(words), said::toString);
    }

    @Test
    void saysAllProblemsAtOnce() {
        List<String> said = problems(DARK.replace("work low = 31 C", "wrok low = 31 C")
                .replace("warn = 32.5 C", "warn = hot")
                .replace("name = ", "name = x\nname = ")
                .replaceFirst("scorch.*\n", ""));
        assertEquals(4, said.size(), said::toString);
        String all = String.join("\n", said);
        for (String words :
                List.of("\"wrok low\"", "\"name\" stands here a second", "\"scorch\" is missing", "\"hot\""))
            assertTrue(all.contains(words), all);
    }

    @Test
    void anEmptyTextMissesEveryKey() {
        assertEquals(RecipeKey.values().length, problems("").size());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverThrowsWhateverTheText(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder(DARK);
        for (int i = 0; i < 20; i++) {
            int at = random.nextInt(text.length());
            text.replace(at, Math.min(text.length(), at + random.nextInt(4)), "" + (char) random.nextInt(1, 300));
        }
        RecipeText.parse("x", text.toString()).fold(read -> RecipeText.write(read), List::size);
    }

    @Test
    void refusesToWriteWhatCouldNotBeReadBack() {
        Recipe dark = BuiltIn.recipe("dark");
        for (String name : List.of("", " dark", "two\nlines", "dark # 3", "# 3")) {
            Recipe odd = named(dark, name);
            assertThrows(IllegalArgumentException.class, () -> RecipeText.write(odd), name);
        }
        assertTrue(RecipeText.write(named(dark, "dark#3")).contains("name = dark#3\n"));
    }

    private static Recipe named(Recipe recipe, String name) {
        return new Recipe(
                recipe.id(),
                name,
                recipe.composition(),
                recipe.melt(),
                recipe.cool(),
                recipe.work(),
                recipe.meltOut(),
                recipe.scorchCelsius(),
                recipe.rewarmBathCelsius(),
                recipe.basis(),
                recipe.sources());
    }

    private static List<String> problems(String text) {
        return RecipeText.parse("x", text)
                .fold(
                        recipe -> new ArrayList<>(),
                        found -> found.stream().map(Object::toString).toList());
    }
}
