package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fifthform.monitor.catalogue.Recipes;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.Look.Asking;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.settings.Units;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.terminal.Ink;
import fifthform.monitor.terminal.Letters;
import fifthform.monitor.terminal.TerminalLayout;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.texts.PlainWords;
import fifthform.monitor.texts.PretendLanguage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The program in another language: nothing stumbles, and no English is left but what is no text of its own. */
class AnotherLanguageTest {
    /** Two plain words on end, which in help are no values of an option. */
    private static final Pattern TWO = Pattern.compile("(?<![\\p{L}./_-])[A-Za-z]{2,} [A-Za-z]{2,}(?![\\p{L}/_-])");

    /** What is to be typed. */
    private static final Pattern TYPED =
            Pattern.compile("monitor/run( [a-z][a-z-]*)?|--[a-z-]+[ =]?[\\w<>|.]*|/[\\w./-]+");

    /** What has a name of its own. */
    private static final List<String> CHOCOLATES = Recipes.load(Path.of("none")).known().stream()
            .map(known -> known.recipe().name())
            .toList();

    /** The points of a forecast, drawn with letters. */
    private static final Pattern DRAWN = Pattern.compile("o{2,}");

    @TempDir
    Path folder;

    private PretendLanguage language;

    @BeforeEach
    void speak() {
        language = PretendLanguage.spoken();
    }

    @AfterEach
    void speakEnglishAgain() {
        language.close();
    }

    @Test
    void theTerminalOfEightyByTwentyFour() {
        TerminalLayout layout = new TerminalLayout(Ink.PLAIN, Letters.UNICODE);
        Set<String> english = new TreeSet<>();
        Tapes.each(Tapes.UNPLUGGED, snapshot -> {
            WatchPicture picture = WatchModel.picture(
                    snapshot,
                    new Look(
                            Units.CELSIUS,
                            ZoneOffset.UTC,
                            List.of(),
                            KeyMap.USUAL,
                            KeyMap.USUAL.fill(LiveText.KEYS_OF_WATCH.say()),
                            Optional.empty(),
                            Optional.of(KeyMap.USUAL.fill(LiveText.NOTICE_OF_PRACTICE.say())),
                            Asking.ANSWERED));
            List<AttributedString> lines = layout.lay(picture, 80, 24);
            assertEquals(24, lines.size());
            for (AttributedString line : lines) {
                assertEquals(80, line.columnLength(), line.toString());
                english.addAll(PlainWords.in(DRAWN.matcher(line.toString()).replaceAll(" "), CHOCOLATES));
            }
        });
        assertEquals(Set.of(), english);
    }

    @Test
    void replayNotebookAndSetupInLines() throws IOException {
        String data = "--data=" + folder;
        Path tape = folder.resolve("sessions/2026-demo.tempering.jsonl");
        Files.createDirectories(tape.getParent());
        Files.copy(GoldenSessionTest.golden(), tape);
        english(Said.by("replay", "--screen", "lines", tape.toString(), data));
        english(Said.by("notebook", "--screen", "lines", "--practice", data));
        english(Said.by("setup", "--screen", "lines", data), options());
        english(Said.by("plan", "--amount", "800", "--bowl", "steel", data));
        english(Said.by("look", "last", "--bloom", "streaks", "--place", "edges", "--age", "24h", data));
        english(Said.by("learn", "--practice", data), options());
    }

    @Test
    void theHelpOfEveryCommand() {
        CommandHelpTest.commands().forEach(command -> {
            Set<String> english = new TreeSet<>();
            TWO.matcher(TYPED.matcher(command.getUsageMessage(CommandLine.Help.Ansi.OFF)
                                    .replaceAll("(?m)^.*monitor/run .*$", ""))
                            .replaceAll("·"))
                    .results()
                    .map(MatchResult::group)
                    .filter(two -> !two.matches("[A-Z]+ .*"))
                    .forEach(english::add);
            assertEquals(Set.of(), english, command.getCommandSpec().qualifiedName());
        });
    }

    /** Names and values of settings, as Setup takes them, and names of chocolates for options. */
    private List<String> options() {
        return Stream.concat(
                        new SetupDesk(Folders.of("Linux", Map.of(), folder), Instant::now)
                                .all().stream()
                                        .flatMap(setting -> Stream.concat(
                                                Stream.of(setting.name(), setting.usual()),
                                                setting.possible().stream())),
                        Recipes.load(folder).known().stream()
                                .flatMap(known -> Stream.of(
                                        known.recipe().id(), known.recipe().name())))
                .toList();
    }

    private static void english(Said said) {
        english(said, CHOCOLATES);
    }

    private static void english(Said said, List<String> names) {
        assertFalse(said.out().isBlank(), said.err());
        assertEquals(Set.of(), PlainWords.in(said.err(), names));
        assertEquals(Set.of(), PlainWords.in(said.out(), names));
    }
}
