package fifthform.monitor.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md says what is in the tree, and the tree holds what it says. */
class HouseTest {
    private static final String PAGE = House.page("DEVELOPERS.md");

    /** Names of the platform and of libraries that the page mentions. */
    private static final Set<String> NOT_OURS = Set.of("Instant", "AtomicReference", "Double", "BigDecimal");

    @Test
    void theTopLevelHoldsOnlyWhatItMay() throws IOException {
        Set<String> allowed = new TreeSet<>(List.of("README.md", "DEVELOPERS.md", "SAFETY.md", "pom.xml"));
        allowed.addAll(House.MODULES);
        try (Stream<Path> entries = Files.list(House.ROOT)) {
            Set<String> found = entries.map(entry -> entry.getFileName().toString())
                    // Dot-files are allowed, and what a build leaves behind is no part of the tree.
                    .filter(name -> !name.startsWith(".") && !name.equals("target"))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(allowed, found);
        }
    }

    @Test
    void theRoomsAreThoseOfTheTreeInTheirOwnWords() {
        Map<String, String> told = new TreeMap<>();
        for (List<String> row : House.rows(House.section(PAGE, "Rooms of the house")))
            told.put("fifthform." + unquoted(row.get(0)), row.get(1));
        assertEquals(rooms(), told);
    }

    @Test
    void everyPackageSaysWhatItIsFor() {
        Set<String> packages = House.mainSources().stream()
                .map(file -> House.matches("^package ([\\w.]+);", House.text(file))
                        .get(0)
                        .group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(packages, rooms().keySet());
    }

    @Test
    void everyTestThatIsNamedExists() {
        Set<String> tests = House.testSources().stream()
                .map(file -> file.getFileName().toString().replace(".java", ""))
                .collect(Collectors.toSet());
        Set<String> missing = named("`(\\w+Test)`");
        assertFalse(missing.isEmpty(), "the decisions name no test");
        missing.removeAll(tests);
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyDecisionNamesItsTestOrSaysThatThereIsNone() {
        List<String> decisions = List.of(House.section(PAGE, "Decisions").split("\n\n"));
        List<String> silent = decisions.stream()
                .filter(decision -> decision.startsWith("**"))
                .filter(decision -> !decision.contains("Test`") && !decision.contains("No test yet"))
                .toList();
        assertEquals(List.of(), silent);
    }

    @Test
    void everyTypeThatIsNamedExists() {
        String sources = Stream.concat(House.mainSources().stream(), House.testSources().stream())
                .map(House::text)
                .collect(Collectors.joining("\n"));
        Set<String> types = House.matches("\\b(?:class|record|interface|enum) (\\w+)", sources).stream()
                .map(found -> found.group(1))
                .collect(Collectors.toSet());
        Set<String> missing = named("`([A-Z][a-z]\\w+)(?:\\.[\\w.]+)?(?:\\([^`]*\\))?`");
        missing.removeAll(types);
        missing.removeAll(NOT_OURS);
        assertEquals(Set.of(), missing);
    }

    /** Paths with a name to fill in, such as ID, stand for their folder. */
    @Test
    void everyPathThatIsNamedExists() {
        List<String> missing = House.matches("`((?:curves|probe-driver|simulator|monitor)/[^` ]*)`", PAGE).stream()
                .map(found -> found.group(1))
                .filter(path -> !Files.exists(House.ROOT.resolve(path.replaceAll("[A-Z]{2,}\\.[a-z]+$", ""))))
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void theJournalsKindsAreThoseOfTheCode() {
        List<List<String>> rows = House.rows(House.section(PAGE, "The journal"));
        Set<String> told =
                rows.stream().map(row -> unquoted(row.get(0))).collect(Collectors.toCollection(TreeSet::new));
        Set<String> kinds = House.matches("^ {4}[A-Z_]+\\(\"(\\w)\"\\)", House.text(House.source("LineKind"))).stream()
                .map(kind -> kind.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(kinds, told);
        for (List<String> row : rows)
            assertEquals("`{\"k\":\"" + unquoted(row.get(0)) + "\"", row.get(2).substring(0, 9));
    }

    /** Package → the sentence of its package-info, links as plain names. */
    private static Map<String, String> rooms() {
        Map<String, String> rooms = new TreeMap<>();
        for (Path file : House.mainSources()) {
            if (!file.endsWith("package-info.java")) continue;
            MatchResult info = House.matches("/\\*\\*([\\s\\S]*?)\\*/\\s*package ([\\w.]+);", House.text(file))
                    .get(0);
            String sentence = info.group(1)
                    .replaceAll("\\s*\\n\\s*\\*\\s*", " ")
                    .replaceAll("\\{@(?:code|link) (?:[\\w.]*\\.)?(\\w+)\\}", "`$1`")
                    .strip();
            rooms.put(info.group(2), sentence);
        }
        return rooms;
    }

    private static Set<String> named(String expression) {
        return House.matches(expression, PAGE).stream()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String unquoted(String cell) {
        return cell.replace("`", "");
    }
}
