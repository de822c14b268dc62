package fifthform.monitor.texts;

import java.text.Format;
import java.text.MessageFormat;
import java.util.Locale;

/** One text, parsed and ready to be said as often as a screen is painted. */
final class Sentence {
    private static final Object[] NONE = {};

    private final MessageFormat format;
    private final Format[] choices;
    private final String bare;

    /** @throws IllegalArgumentException where the braces of the pattern do not fit together */
    Sentence(String pattern) {
        this.format = new MessageFormat(pattern, Locale.ROOT);
        this.choices = format.getFormatsByArgumentIndex();
        this.bare = format.format(NONE);
    }

    String with(Object... parts) {
        if (choices.length == 0) return bare;
        Object[] said = new Object[parts.length];
        for (int i = 0; i < parts.length; i++) said[i] = isCount(i) ? parts[i] : String.valueOf(parts[i]);
        // A format keeps what it is at in itself, and screens are painted by several threads.
        synchronized (format) {
            return format.format(said);
        }
    }

    /** Whether the text chooses by this part; every other number would be grouped into thousands. */
    private boolean isCount(int part) {
        return part < choices.length && choices[part] != null;
    }
}
