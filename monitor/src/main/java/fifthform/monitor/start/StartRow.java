package fifthform.monitor.start;

import java.util.List;
import java.util.Objects;

/**
 * One thing to choose, as large as a sticky finger needs it.
 *
 * @param words its name
 * @param aside the figure that tells it from others
 * @param details what is known of it, for the pane beside
 */
public record StartRow(String words, String aside, List<String> details) {
    public StartRow {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(aside, "aside");
        details = List.copyOf(details);
    }
}
