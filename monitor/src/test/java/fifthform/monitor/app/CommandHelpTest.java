package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/** Every command explains itself with an example, and the examples are commands that the program understands. */
class CommandHelpTest {
    private static final Pattern EXAMPLE = Pattern.compile("\\bmonitor/run ([^|]+)$");

    @TempDir
    Path folder;

    static Stream<CommandLine> commands() {
        return withChildren(FifthForm.line());
    }

    private static Stream<CommandLine> withChildren(CommandLine command) {
        return Stream.concat(
                Stream.of(command), command.getSubcommands().values().stream().flatMap(CommandHelpTest::withChildren));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void hasHelpWithExamplesThatAreUnderstood(CommandLine command) {
        String name = command.getCommandSpec().qualifiedName();
        List<String> examples = examples(command);
        assertFalse(examples.isEmpty(), name + " has no example");
        for (String example : examples) {
            String arguments = example.replaceAll(" > .*$", "");
            CommandLine.ParseResult parsed = FifthForm.line().parseArgs(arguments.split(" "));
            assertTrue(
                    example.startsWith(name.replaceFirst("monitor/run ?", "")), example + " is no example of " + name);
            assertTrue(parsed.hasSubcommand(), example);
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void longOptionsOnly(CommandLine command) {
        command.getCommandSpec().options().stream()
                .flatMap(option -> Stream.of(option.names()))
                .filter(name -> !name.startsWith("--"))
                .forEach(name -> assertTrue(List.of("-h", "-V").contains(name), name));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everythingIsExplained(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        assertTrue(spec.usageMessage().description().length > 0, spec.qualifiedName());
        for (ArgSpec arg : spec.args())
            assertTrue(arg.hidden() || arg.description().length > 0, spec.qualifiedName() + " " + arg.paramLabel());
    }

    /** Every line of the file explains a command, an option or what stands without one, by the names that picocli asks for. */
    @Test
    void noLineOfHelpIsLeftOver() {
        Set<String> asked = commands()
                .map(CommandLine::getCommandSpec)
                .flatMap(spec -> keys(spec).flatMap(key -> Stream.of(key, spec.qualifiedName(".") + "." + key)))
                .collect(Collectors.toSet());
        List<String> leftOver = ResourceBundle.getBundle(FifthForm.HELP, Locale.ROOT).keySet().stream()
                .filter(key -> !asked.contains(key.replaceFirst("\\.[0-9]+$", "")))
                .sorted()
                .toList();
        assertEquals(List.of(), leftOver);
    }

    private static Stream<String> keys(CommandSpec spec) {
        return Stream.of(
                        Stream.of("usage.description", "usage.footer"),
                        spec.options().stream()
                                .map(option -> option.longestName().replaceFirst("^-+", "")),
                        spec.options().stream().map(ArgSpec::descriptionKey),
                        spec.positionalParameters().stream().map(arg -> arg.paramLabel() + "[" + arg.index() + "]"))
                .flatMap(keys -> keys);
    }

    @Test
    void theExamplesThatNeedNoProbeWorkAsPrinted() throws Exception {
        String data = "--data=" + folder;
        Files.createDirectories(folder.resolve("sessions"));
        Files.copy(GoldenSessionTest.golden(), folder.resolve("sessions/2026-demo.tempering.jsonl"));
        assertEquals(0, Said.by("recipes", data).exit());
        Said dark = Said.by("recipes", "show", "dark", data);
        assertEquals(0, dark.exit());
        Path own = Files.writeString(folder.resolve("my-dark.recipe"), dark.out());
        assertEquals(0, Said.by("recipes", "check", own.toString(), data).exit());
        assertEquals(
                0,
                Said.by("recipes", "from", "--cocoa-butter", "38", "--milk-fat", "0", "--sugar", "30")
                        .exit());
        assertEquals(0, Said.by("replay", "--screen", "none", "last", data).exit());
        assertEquals(0, Said.by("analyse", "--summary", "last", data).exit());
        assertEquals(
                0,
                Said.withInput("time_s,temperature_c\n0,31.0\n1,31.2\n", "analyse", "-")
                        .exit());
        Said version = Said.by("-V");
        assertTrue(version.out().matches("Fifth Form \\d+\\.\\d+\\.\\d+\\R"), version.out());
        assertEquals(0, Said.by().exit());
    }

    @Test
    void aSlipIsAnsweredWithTheNearestWord() {
        Said said = Said.by("wacth");
        assertEquals(2, said.exit());
        assertTrue(said.err().contains("watch"), said.err());
    }

    private static List<String> examples(CommandLine command) {
        List<String> examples = new ArrayList<>();
        for (String line : command.getCommandSpec().usageMessage().footer()) {
            Matcher example = EXAMPLE.matcher(line);
            if (example.find()) examples.add(example.group(1));
        }
        return examples;
    }
}
