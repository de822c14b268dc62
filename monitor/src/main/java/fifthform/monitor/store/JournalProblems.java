package fifthform.monitor.store;

import fifthform.curves.check.Problem;
import fifthform.monitor.texts.FileText;
import java.nio.file.Path;
import java.util.Set;

/** What can be wrong in a session's file, in the same words whoever reads it. */
final class JournalProblems {
    private JournalProblems() {}

    static Problem torn(RawLine line) {
        return new Problem(
                line.toString(),
                FileText.THE_FILE_ENDS_IN_THE_MIDDLE.say(line.bytes().length),
                FileText.NOTHING_NEEDS_TO_BE_DONE.say());
    }

    static Problem damaged(String line, String why) {
        return new Problem(
                line, FileText.IT_IS_DAMAGED_AND_LEFT_OUT.say(why), FileText.THE_REST_OF_THE_SESSION_IS.say());
    }

    /** The number of an input does not follow on the one before. */
    static Problem outOfOrder(String line, long sequence, long before) {
        long missing = sequence - before - 1;
        return new Problem(
                line,
                missing > 0
                        ? FileText.MISSING_BEFORE_IT.say(missing)
                        : FileText.ITS_NUMBER_IS_NOT_ABOVE_THE.say(sequence, before),
                FileText.WHAT_IS_THERE_IS_USED_A.say());
    }

    static Problem changed(int firstLine, int lastLine) {
        return new Problem(
                FileText.LINES_TO.say(firstLine, lastLine),
                FileText.THEY_ARE_NOT_AS_THEY_WERE.say(),
                FileText.WHAT_CAN_BE_READ_IS_USED.say());
    }

    static Problem newerLines(Path file, int lines, Set<String> kinds) {
        return new Problem(
                file.toString(),
                FileText.LINES_OF_UNKNOWN_KIND_WERE.say(lines, String.join(", ", kinds)),
                FileText.READ_THE_SESSION_WITH_A_NEWER.say());
    }

    static Problem newerFormat(long format) {
        return new Problem(
                FileText.LINE_1.say(),
                FileText.THIS_SESSION_WAS_WRITTEN_BY_A.say(format),
                FileText.READ_IT_WITH_A_NEWER_PROGRAM.say());
    }
}
