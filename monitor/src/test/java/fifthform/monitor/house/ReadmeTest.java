package fifthform.monitor.house;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.monitor.app.FifthForm;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** What README.md and the commands' own help tell people to type is understood. */
class ReadmeTest {
    private static final String PAGE = House.page("README.md");

    static Stream<String> readmeCommands() {
        return House.matches("```sh\\n([\\s\\S]*?)```", PAGE).stream()
                .flatMap(block -> block.group(1).lines())
                .filter(line -> line.contains("monitor/run "))
                .map(line -> line.substring(line.indexOf("monitor/run ") + "monitor/run ".length()));
    }

    /** The examples in the help of every command, at any depth. */
    static Stream<String> helpCommands() {
        return everyCommand(program())
                .flatMap(line -> Stream.of(line.getCommandSpec().usageMessage().footer()))
                .flatMap(line -> House.matches("\\bmonitor/run (.*)", line).stream())
                .map(example -> example.group(1));
    }

    @ParameterizedTest
    @MethodSource({"readmeCommands", "helpCommands"})
    void aCommandThatIsShownIsUnderstood(String shown) {
        String typed = shown.replaceAll(" > .*", "");
        assertDoesNotThrow(() -> program().parseArgs(typed.split(" ")), typed);
    }

    @Test
    void everyCommandHasAnExample() {
        List<String> without = everyCommand(program())
                .filter(line -> Stream.of(line.getCommandSpec().usageMessage().footer())
                        .noneMatch(footer -> footer.contains("monitor/run ")))
                .map(line -> line.getCommandSpec().qualifiedName())
                .toList();
        assertEquals(List.of(), without);
    }

    /** One way of naming the program in all that people see: the one that works from this page alone. */
    @Test
    void nothingThatIsSaidNamesTheProgramOtherwise() throws IOException {
        Set<String> otherwise = new TreeSet<>();
        for (String room : List.of("monitor", "probe-driver", "simulator")) {
            try (Stream<Path> files = Files.walk(House.ROOT.resolve(room + "/src/main/java"))) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .flatMap(file ->
                                House.matches("\"[^\"\\n]*\\bfifthform [a-z][^\"\\n]*\"", House.text(file)).stream())
                        .forEach(found -> otherwise.add(found.group()));
            }
        }
        assertEquals(Set.of(), otherwise);
        assertEquals("monitor/run", program().getCommandSpec().qualifiedName());
    }

    @Test
    void everyCommandIsShown() {
        Set<String> shown =
                readmeCommands().map(line -> line.split(" ")[0]).collect(Collectors.toCollection(TreeSet::new));
        Set<String> missing = new TreeSet<>(program().getSubcommands().keySet());
        missing.removeAll(shown);
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyOptionThatIsNamedExists() {
        Set<String> known = everyCommand(program())
                .flatMap(line -> line.getCommandSpec().options().stream())
                .flatMap(option -> Stream.of(option.names()))
                .collect(Collectors.toSet());
        Set<String> missing = House.matches("(?<![\\w-])--[a-z][a-z-]*", PAGE).stream()
                .map(found -> found.group())
                .collect(Collectors.toCollection(TreeSet::new));
        assertFalse(missing.isEmpty());
        missing.removeAll(known);
        assertEquals(Set.of(), missing);
    }

    @Test
    void theExitCodesAreThoseOfTheCode() {
        Set<String> told = House.rows(House.section(PAGE, "Exit codes")).stream()
                .map(row -> row.get(0))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> codes = House.matches("^ {4}[A-Z_]+\\((\\d+)\\)", House.text(House.source("Exit"))).stream()
                .map(code -> code.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(codes, told);
    }

    @Test
    void thePracticeBatchesThatAreNamedExist() {
        List<String> missing = House.matches("`([a-z-]+)`", line("The practice batches are")).stream()
                .map(found -> found.group(1))
                .filter(id ->
                        !Files.exists(House.ROOT.resolve("simulator/src/main/resources/scenarios/" + id + ".txt")))
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void theFirstCommandsProfileExists() {
        assertTrue(PAGE.contains("\nmvn -q -Pwatch\n"));
        assertTrue(House.page("pom.xml").contains("<id>watch</id>"));
    }

    private static String line(String beginning) {
        return PAGE.lines()
                .filter(line -> line.startsWith(beginning))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line begins with: " + beginning));
    }

    private static Stream<CommandLine> everyCommand(CommandLine line) {
        return Stream.concat(
                Stream.of(line), line.getSubcommands().values().stream().flatMap(ReadmeTest::everyCommand));
    }

    private static CommandLine program() {
        CommandLine line = FifthForm.line();
        line.setCaseInsensitiveEnumValuesAllowed(true);
        return line;
    }
}
