package fifthform.monitor.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fifthform.monitor.texts.Text;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the maker reads stands in the files of texts and nowhere else, and is said with the parts it asks for. */
class TextsInPlaceTest {
    /** The rooms whose words have all been moved. What is not among them still says some of its words itself. */
    private static final Set<String> DONE = Set.of("model");

    private static final Pattern SENTENCE = Pattern.compile("\\p{L}[\\p{L}.,;:!?’'–-]* +\\p{L}");

    private static final List<Path> SOURCES = House.mainSources().stream()
            .filter(file -> House.room(file).startsWith("monitor"))
            .toList();

    private static final SourceWords WORDS = SourceWords.of(SOURCES);

    @Test
    void noSentenceStandsInTheCodeOfARoomThatIsDone() {
        List<String> sentences = WORDS.literals.stream()
                .filter(literal -> DONE.contains(House.room(literal.file()).replace("monitor.", "")))
                .filter(literal -> SENTENCE.matcher(literal.words()).find())
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
    void everyTextIsSaidSomewhere() {
        String code = SOURCES.stream()
                .filter(file -> !House.room(file).equals("monitor.texts"))
                .map(House::text)
                .collect(Collectors.joining("\n"));
        Set<String> named = House.matches("\\b[A-Z][A-Z0-9_]*\\b", code).stream()
                .map(found -> found.group())
                .collect(Collectors.toSet());
        Map<String, Set<String>> silent = new TreeMap<>();
        for (Path file : House.wordFiles()) {
            Set<String> unsaid = bundle(House.bareName(file)).keySet().stream()
                    .map(key -> key.toUpperCase(Locale.ROOT).replace('-', '_'))
                    .filter(name -> !named.contains(name))
                    .collect(Collectors.toCollection(TreeSet::new));
            if (!unsaid.isEmpty()) silent.put(House.bareName(file), unsaid);
        }
        assertEquals(Map.of(), silent);
    }

    private static int parts(String keys, String key) {
        String words = bundle(keys).getString(key.toLowerCase(Locale.ROOT).replace('_', '-'));
        return new MessageFormat(words, Locale.ROOT).getFormatsByArgumentIndex().length;
    }

    private static ResourceBundle bundle(String keys) {
        return ResourceBundle.getBundle(Text.class.getPackageName() + "." + keys, Locale.ROOT);
    }
}
