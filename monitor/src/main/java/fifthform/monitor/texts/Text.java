package fifthform.monitor.texts;

import java.util.Locale;

/** A text by its key. Each part of the program has its own enum of keys. */
public interface Text {
    /** The constant's name; {@code TWO_WORDS} stands as {@code two-words} in the file. */
    String name();

    /** The key in the file. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The text in the language of the program's locale, else English.
     *
     * @param parts what stands at {0}, {1} and so on, as its {@code toString} has it: numbers with units come as words,
     *     since their units follow a setting; only where the text chooses by a count is the number itself wanted
     */
    default String say(Object... parts) {
        return Book.of(getClass()).sentence(this).with(parts);
    }
}
