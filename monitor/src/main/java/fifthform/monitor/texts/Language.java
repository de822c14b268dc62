package fifthform.monitor.texts;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The languages there are texts in, by their codes of ISO 639. One counts from when the words of Watch are translated; what
 * else it lacks is said in English.
 */
public final class Language {
    /** What all texts are written in first. */
    public static final String ENGLISH = Locale.ENGLISH.getLanguage();

    /** The English in which they are written, for documents that say their language. */
    private static final Locale BRITISH = Locale.UK;

    private Language() {}

    /** All there are; English first. */
    public static List<String> all() {
        return Stream.concat(
                        Stream.of(ENGLISH), Stream.of(Locale.getISOLanguages()).filter(Language::isTranslated))
                .toList();
    }

    /** Whether there are texts in it. */
    public static boolean isKnown(String code) {
        return code.equals(ENGLISH) || isTranslated(code);
    }

    private static boolean isTranslated(String code) {
        return code.matches("[a-z]{2,3}")
                && Language.class.getResource(WatchText.class.getSimpleName() + "_" + code + ".properties") != null;
    }

    /** Speaks it from now on, as if the computer's language were that one. */
    public static void speak(String code) {
        Locale.setDefault(Locale.forLanguageTag(code));
    }

    /** What is spoken, as a tag for documents: {@code en-GB}. */
    public static String tag() {
        Locale spoken = Book.of(WatchText.class).language();
        return (spoken.equals(Locale.ENGLISH) ? BRITISH : spoken).toLanguageTag();
    }
}
