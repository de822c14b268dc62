package fifthform.monitor.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
                .filter(shown ->
                        !House.joinedTexts(House.source(shown.group(1))).contains(shown.group(2)))
                .map(shown -> shown.group())
                .toList();
        assertEquals(List.of(), silent);
    }

    @Test
    void whereTheProgramWarnsThePageKnowsOfIt() {
        Set<String> told = House.matches(SHOWN, PAGE).stream()
                .map(shown -> shown.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> warns = House.mainSources().stream()
                .filter(source -> !House.matches("\"[^\"\\n]*(?:" + CAUTION_WORDS + ")[^\"\\n]*\"", House.text(source))
                        .isEmpty())
                .map(source -> source.getFileName().toString().replace(".java", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(warns, told);
    }

    @Test
    void itDefersToThoseWhoMayDecide() {
        for (String who : List.of("local law", "electrician", "doctor", "food authority", "emergency number"))
            assertTrue(PAGE.contains(who), who);
    }
}
