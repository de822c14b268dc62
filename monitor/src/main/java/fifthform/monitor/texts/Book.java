package fifthform.monitor.texts;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/** The words of one enum in one language: opened when the first of them is said, and each sentence parsed once. */
final class Book {
    private static final ConcurrentMap<Class<?>, Book> OPEN = new ConcurrentHashMap<>();

    private final Locale wanted;
    private final ResourceBundle words;
    private final ConcurrentMap<Text, Sentence> sentences = new ConcurrentHashMap<>();

    private Book(Class<?> keys, Locale language) {
        this.wanted = language;
        this.words = ResourceBundle.getBundle(keys.getName(), language);
    }

    /** The book of these keys in the language of now; it changes only with the program's locale. */
    static Book of(Class<?> keys) {
        Locale language = Locale.getDefault(Locale.Category.DISPLAY);
        Book book = OPEN.get(keys);
        if (book != null && book.wanted.equals(language)) return book;
        return OPEN.compute(
                keys, (k, old) -> old != null && old.wanted.equals(language) ? old : new Book(keys, language));
    }

    /** The language that the words are in: English where there is no translation. */
    Locale language() {
        return words.getLocale().equals(Locale.ROOT) ? Locale.ENGLISH : words.getLocale();
    }

    Sentence sentence(Text text) {
        Sentence sentence = sentences.get(text);
        return sentence != null
                ? sentence
                : sentences.computeIfAbsent(text, t -> new Sentence(words.getString(t.key())));
    }
}
