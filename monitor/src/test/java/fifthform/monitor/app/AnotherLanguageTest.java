package fifthform.monitor.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.monitor.model.KeyMap;
import fifthform.monitor.model.Look;
import fifthform.monitor.model.Look.Asking;
import fifthform.monitor.model.WatchModel;
import fifthform.monitor.model.WatchPicture;
import fifthform.monitor.session.Tapes;
import fifthform.monitor.settings.Units;
import fifthform.monitor.terminal.Ink;
import fifthform.monitor.terminal.Letters;
import fifthform.monitor.terminal.TerminalLayout;
import fifthform.monitor.texts.LiveText;
import fifthform.monitor.texts.PretendLanguage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
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
    /** Two plain words on end; every letter of the pretend language has an accent. */
    private static final Pattern ENGLISH = Pattern.compile("(?<![\\p{L}./_-])[A-Za-z]{2,} [A-Za-z]{2,}(?![\\p{L}/_-])");

    /** What is to be typed, and what stands in quotation marks as somebody gave it. */
    private static final Pattern TYPED =
            Pattern.compile("monitor/run( [a-z][a-z-]*)?|--[a-z-]+[ =]?[\\w<>|.]*|/[\\w./-]+");

    /** Its words for crystals and cues are not among the texts. */
    private static final List<String> OF_THE_ENGINE = Stream.concat(
                    Stream.of(SeedWord.values()).map(SeedWord::word),
                    Stream.of(CueId.values()).map(CueId::word))
            .toList();

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
                english.addAll(english(line.toString()));
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
        english(Said.by("setup", "--screen", "lines", data));
        english(Said.by("plan", "--amount", "800", "--bowl", "steel", data));
        english(Said.by("look", "last", "--bloom", "streaks", "--place", "edges", "--age", "24h", data));
        english(Said.by("learn", "--practice", data));
    }

    @Test
    void theHelpOfEveryCommand() {
        CommandHelpTest.commands().forEach(command -> {
            Set<String> english = english(
                    command.getUsageMessage(CommandLine.Help.Ansi.OFF).replaceAll("(?m)^.*monitor/run .*$", ""));
            english.removeIf(words -> words.matches("[A-Z]+ .*"));
            assertEquals(Set.of(), english, command.getCommandSpec().qualifiedName());
        });
    }

    private static void english(Said said) {
        assertFalse(said.out().isBlank(), said.err());
        assertEquals(Set.of(), english(said.err()));
        assertEquals(Set.of(), english(said.out()));
    }

    private static Set<String> english(String words) {
        Set<String> english = new TreeSet<>();
        String own = words;
        for (String word : OF_THE_ENGINE) own = own.replace(word.replace('-', ' '), "·");
        ENGLISH.matcher(TYPED.matcher(own).replaceAll("·"))
                .results()
                .map(MatchResult::group)
                .forEach(english::add);
        return english;
    }
}
