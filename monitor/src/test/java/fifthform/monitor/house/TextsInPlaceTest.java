package fifthform.monitor.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fifthform.monitor.texts.Text;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the maker reads stands in the files of texts and nowhere else, and is said with the parts it asks for. */
class TextsInPlaceTest {
    private static final Pattern SENTENCE = Pattern.compile("\\p{L}[\\p{L}.,;:!?’'–-]* +\\p{L}");

    /** What is no language: commands to be typed, markup, names in files, and what others' programs say. */
    private static final Pattern NO_LANGUAGE = Pattern.compile(String.join(
            "|",
            "^monitor/run ",
            "=\"",
            "^\\s*<[a-z]",
            "^B612, ",
            "^(notebook|learned) index ",
            "^PRODID:",
            "^# simulated: ",
            "Fifth Form ?$",
            "^ --lift one$",
            "^After input $",
            "^yyyy-MM-dd ",
            "^Page (Up|Down)$",
            "^Application Support$",
            "^built in$",
            "\\(\\?<",
            "^Unsupported JavaFX ",
            "^Expected parameter for option$",
            "^(melt|cool|work) (low|high)$"));

    /** The files of texts that are said by their keys; the help of commands is found by names of commands. */
    private static final List<Path> TEXTS = House.wordFiles().stream()
            .filter(file -> !House.bareName(file).equals("HelpText"))
            .toList();

    private static final List<Path> SOURCES = House.mainSources().stream()
            .filter(file -> House.room(file).startsWith("monitor"))
            .toList();

    private static final SourceWords WORDS =
            SourceWords.of(SOURCES, TEXTS.stream().map(House::bareName).collect(Collectors.toSet()));

    @Test
    void noSentenceStandsInTheCode() {
        List<String> sentences = WORDS.literals.stream()
                .filter(literal -> SENTENCE.matcher(literal.words()).find())
                .filter(literal -> !NO_LANGUAGE.matcher(literal.words()).find())
                .map(SourceWords.Literal::toString)
                .toList();
        assertEquals(List.of(), sentences, "write it into the file of the screen's texts, and say it by its key");
    }

    @Test
    void everyTextIsSaidWithThePartsItAsksFor() {
        List<String> wrong = WORDS.said.stream()
                .filter(said -> parts(said.keys(), said.key()) != said.parts())
                .map(said -> said + ", its words ask for " + parts(said.keys(), said.key()))
                .toList();
        assertFalse(WORDS.said.isEmpty());
        assertEquals(List.of(), wrong);
    }

    @Test
    void aTextThatIsHandedOnIsSaidWithThePartsItAsksForOrNeedsNone() {
        List<String> wrong = WORDS.kept.stream()
                .filter(kept -> parts(kept.keys(), kept.key()) > 0)
                .filter(kept -> !WORDS.partsOfKept
                        .getOrDefault(House.room(kept.file()), Set.of())
                        .contains(parts(kept.keys(), kept.key())))
                .map(SourceWords.Kept::toString)
                .toList();
        assertEquals(List.of(), wrong, "no text that this room keeps is said with so many parts as it asks for");
    }

    @Test
    void everyTextIsSaidSomewhere() {
        Set<String> named = Stream.concat(
                        WORDS.said.stream().map(said -> said.keys() + "." + said.key()),
                        WORDS.kept.stream().map(kept -> kept.keys() + "." + kept.key()))
                .collect(Collectors.toSet());
        WORDS.byName.forEach((file, keys) -> House.matches("\\b[A-Z][A-Z0-9_]*\\b", House.text(file))
                .forEach(constant -> named.add(keys + "." + constant.group())));
        List<String> unsaid = TEXTS.stream()
                .map(House::bareName)
                .flatMap(keys -> bundle(keys).keySet().stream().map(key -> keys + "." + name(key)))
                .filter(text -> !named.contains(text))
                .sorted()
                .toList();
        assertEquals(List.of(), unsaid);
    }

    @Test
    void theHelpOfCommandsStandsInTheirFile() {
        List<String> inCode = SOURCES.stream()
                .filter(file -> House.matches("\\b(description|footer|header) = [{\"]", House.text(file)).stream()
                        .findAny()
                        .isPresent())
                .map(House::bareName)
                .toList();
        assertEquals(List.of(), inCode, "write it into HelpText.properties, by the names of command and option");
    }

    private static String name(String key) {
        return key.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private static int parts(String keys, String key) {
        String words = bundle(keys).getString(key.toLowerCase(Locale.ROOT).replace('_', '-'));
        return new MessageFormat(words, Locale.ROOT).getFormatsByArgumentIndex().length;
    }

    private static ResourceBundle bundle(String keys) {
        return ResourceBundle.getBundle(Text.class.getPackageName() + "." + keys, Locale.ROOT);
    }
}
