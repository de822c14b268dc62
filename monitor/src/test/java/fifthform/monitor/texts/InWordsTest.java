package fifthform.monitor.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fifthform.curves.crystal.SeedWord;
import fifthform.curves.cue.CueId;
import fifthform.curves.proof.TemperClass;
import fifthform.curves.recipe.OtherFat;
import fifthform.curves.setup.BowlMaterial;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The engine's constants in words; that each has some, the compiler sees to. */
class InWordsTest {
    /** How a sample turned out is said as a sentence goes on, and a fat with examples. */
    private static final Set<Class<?>> IN_OTHER_WORDS = Set.of(TemperClass.class, OtherFat.class);

    static Stream<Method> words() {
        return Arrays.stream(InWords.class.getMethods())
                .filter(method -> method.getName().equals("of"))
                .filter(method -> !IN_OTHER_WORDS.contains(method.getParameterTypes()[0]));
    }

    /** So that what a screen shows and what a file holds are known for the same. */
    @ParameterizedTest
    @MethodSource("words")
    void inEnglishTheyAreTheWordsOfFiles(Method of) throws ReflectiveOperationException {
        Class<?> kind = of.getParameterTypes()[0];
        Method inFiles = kind.getMethod("word");
        for (Object constant : kind.getEnumConstants())
            assertEquals(((String) inFiles.invoke(constant)).replace('-', ' '), of.invoke(null, constant));
    }

    @Test
    void inAnotherLanguageTheyAreNotTheWordsOfFiles() throws ReflectiveOperationException {
        PretendLanguage language = PretendLanguage.spoken();
        try {
            for (Method of : words().toList())
                for (Object constant : of.getParameterTypes()[0].getEnumConstants())
                    assertFalse(((String) of.invoke(null, constant)).matches(".*[A-Za-z].*"));
            assertEquals(InWords.of(SeedWord.TOO_FEW), InWords.crystals("too few"));
            assertEquals(InWords.of(BowlMaterial.STEEL), InWords.bowl("steel", BowlMaterial.STEEL));
            assertEquals("steel", InWords.bowl("steel", BowlMaterial.GLASS));
            assertFalse(InWords.crystals("enough thick").matches(".*[A-Za-z].*"));
        } finally {
            language.close();
        }
    }

    @Test
    void theCrystalsAreKnownFromTheirDataAndWhatIsNotKnownStands() {
        assertEquals("enough, thick", InWords.crystals("enough thick"));
        assertEquals("enough, thick", InWords.crystals(SeedWord.ENOUGH, true));
        assertEquals("too few", InWords.crystals("too few"));
        assertEquals("plenty", InWords.crystals("plenty"));
    }

    @Test
    void aCueIsKnownByItsNameAndWhatIsNotKnownStands() {
        assertEquals(InWords.of(CueId.STOP_COOLING), InWords.cue("stop-cooling"));
        assertEquals("sing now", InWords.cue("sing-now"));
    }
}
