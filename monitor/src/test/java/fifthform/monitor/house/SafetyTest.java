package fifthform.monitor.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The cautions of SAFETY.md and those that the program shows are the same. */
class SafetyTest {
    private static final String PAGE = House.page("SAFETY.md");
    private static final List<List<String>> CAUTIONS = House.rows(House.section(PAGE, "The cautions"));

    /** A class and the words of a caution that it shows: {@code `Notices`: *words*}. */
    private static final String SHOWN = "`(\\w+)`: \\*([^*]+)\\*";

    /** Words by which a caution in the program is known. */
    private static final String CAUTION_WORDS = "scald|on battery|SAFETY\\.md";

    @Test
    void everyCautionHasAnIdOfItsOwnAndIsExplained() {
        List<String> ids = CAUTIONS.stream().map(row -> row.get(0)).toList();
        assertFalse(ids.isEmpty());
        assertEquals(ids.stream().distinct().toList(), ids);
        List<String> unexplained =
                ids.stream().filter(id -> !PAGE.contains("\n" + id + " — ")).toList();
        assertEquals(List.of(), unexplained);
    }

    @Test
    void whatTheProgramIsSaidToShowItShows() {
        List<String> silent = House.matches(SHOWN, House.section(PAGE, "The cautions")).stream()
                .filter(shown -> !words(shown.group(1)).contains(shown.group(2)))
                .map(shown -> shown.group())
                .toList();
        assertEquals(List.of(), silent);
    }

    @Test
    void whereTheProgramWarnsThePageKnowsOfIt() {
        Set<String> told = House.matches(SHOWN, PAGE).stream()
                .map(shown -> shown.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> warns = Stream.concat(
                        House.mainSources().stream().filter(source -> warns("\"[^\"\\n]*", source, "[^\"\\n]*\"")),
                        House.wordFiles().stream().filter(words -> warns("", words, "")))
                .map(House::bareName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(warns, told);
    }

    private static boolean warns(String before, Path file, String after) {
        return !House.matches(before + "(?:" + CAUTION_WORDS + ")" + after, House.text(file))
                .isEmpty();
    }

    /** What a class says: the file of its texts, or else what stands in its source. */
    private static String words(String className) {
        return House.wordFiles().stream()
                .filter(file -> House.bareName(file).equals(className))
                .findFirst()
                .map(file -> House.text(file).replace("''", "'"))
                .orElseGet(() -> House.joinedTexts(House.source(className)));
    }

    @Test
    void itDefersToThoseWhoMayDecide() {
        for (String who : List.of("local law", "electrician", "doctor", "food authority", "emergency number"))
            assertTrue(PAGE.contains(who), who);
    }
}
