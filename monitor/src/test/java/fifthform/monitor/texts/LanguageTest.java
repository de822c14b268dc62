package fifthform.monitor.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Which languages there are texts in. */
class LanguageTest {
    @Test
    void englishIsTheOneThatComesWithTheProgram() {
        assertEquals(List.of("en"), Language.all());
        assertTrue(Language.isKnown("en"));
        for (String none : List.of("fr", "", "english", "EN", "../en")) assertFalse(Language.isKnown(none), none);
    }

    @Test
    void anotherIsKnownWhileItHasTexts() {
        assertFalse(Language.isKnown(PretendLanguage.CODE));
        PretendLanguage language = PretendLanguage.spoken();
        try {
            assertTrue(Language.isKnown(PretendLanguage.CODE));
            assertEquals(PretendLanguage.CODE, Language.tag());
        } finally {
            language.close();
        }
    }

    /** Also where the computer's own language has texts. */
    @Test
    void whatIsSpokenIsWhatIsSaid() {
        String english = WatchText.BELOW.say();
        PretendLanguage language = PretendLanguage.spoken();
        Locale before = Locale.getDefault();
        try {
            Language.speak(Language.ENGLISH);
            assertEquals(english, WatchText.BELOW.say());
            assertEquals("en-GB", Language.tag());
        } finally {
            Locale.setDefault(before);
            language.close();
        }
    }
}
