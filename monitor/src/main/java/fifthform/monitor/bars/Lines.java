package fifthform.monitor.bars;

import fifthform.curves.check.Problem;
import fifthform.monitor.store.AddedLines;
import fifthform.monitor.texts.BarsText;
import java.nio.file.Path;
import java.util.List;

/** Reads what is kept of bars, and says it in words that fit each of its files. */
final class Lines {
    private static final AddedLines.Unread UNREAD = new AddedLines.Unread(
            why -> BarsText.IT_CANNOT_BE_READ.say(why),
            why -> BarsText.THIS_LINE_CANNOT_BE_READ_AND.say(why),
            () -> BarsText.THE_LINE_STAYS_AS_IT_IS.say());

    private Lines() {}

    /** Reads all lines; never fails, but says what could not be read. */
    static List<Problem> read(Path file, AddedLines.Taking taking) {
        return AddedLines.read(file, UNREAD, taking);
    }
}
