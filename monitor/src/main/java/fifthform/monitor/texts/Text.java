package fifthform.monitor.texts;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** A text by its key. Each screen has its own enum of keys. */
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
     * @param parts what stands at {0}, {1} and so on; numbers are given as words, since their units follow a setting
     */
    default String say(Object... parts) {
        String bundle = Text.class.getPackageName() + "." + getClass().getSimpleName();
        String words = ResourceBundle.getBundle(bundle, Locale.getDefault(Locale.Category.DISPLAY))
                .getString(key());
        return new MessageFormat(words, Locale.ROOT).format(parts);
    }
}
