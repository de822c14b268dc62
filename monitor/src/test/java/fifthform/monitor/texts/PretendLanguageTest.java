package fifthform.monitor.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.ChoiceFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The texts can be translated: none loses a part of it by other letters and a third more of them. */
class PretendLanguageTest {
    static Stream<Class<?>> screens() throws Exception {
        return TextsTest.screens();
    }

    @ParameterizedTest
    @MethodSource("screens")
    void everyTextIsSaidInItWithAllItsParts(Class<?> screen) {
        Properties english = PretendLanguage.english(screen.getSimpleName());
        inIt(() -> {
            for (Object constant : screen.getEnumConstants())
                isSaid((Text) constant, english.getProperty(((Text) constant).key()));
        });
    }

    private static void isSaid(Text text, String english) {
        Object[] parts = parts(english);
        String said = text.say(parts);
        assertEquals(keys(english), keys(said), said);
        for (Object part : parts) assertTrue(said.contains(String.valueOf(part)), said + " lacks " + part);
        boolean silent = english.chars().noneMatch(Character::isLetter);
        assertTrue(silent || said.codePoints().anyMatch(letter -> letter > 127), said);
    }

    private static void inIt(Runnable test) {
        PretendLanguage language = PretendLanguage.spoken();
        try {
            test.run();
        } finally {
            language.close();
        }
    }

    /** A number where the text chooses by it, else a word that no text has. */
    private static Object[] parts(String words) {
        Format[] formats = new MessageFormat(words, Locale.ROOT).getFormatsByArgumentIndex();
        List<Object> parts = new ArrayList<>();
        for (Format format : formats) parts.add(format instanceof ChoiceFormat ? 7 : "‹" + parts.size() + "›");
        return parts.toArray();
    }

    private static Set<String> keys(String words) {
        return Pattern.compile("<[a-z-]+>")
                .matcher(words)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void withoutATranslationItSpeaksEnglish() {
        Locale before = Locale.getDefault();
        String english = WatchText.BELOW.say();
        Locale.setDefault(Locale.forLanguageTag("qaa"));
        try {
            assertEquals(english, WatchText.BELOW.say());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void itEndsWhenItIsClosed() {
        String english = WatchText.BELOW.say();
        inIt(() -> assertNotEquals(english, WatchText.BELOW.say()));
        assertEquals(english, WatchText.BELOW.say());
    }
}
