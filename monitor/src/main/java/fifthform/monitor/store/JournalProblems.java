package fifthform.monitor.store;

import fifthform.curves.check.Problem;
import java.nio.file.Path;
import java.util.Set;

/** What can be wrong in a session's file, in the same words whoever reads it. */
final class JournalProblems {
    private JournalProblems() {}

    static Problem torn(RawLine line) {
        return new Problem(
                line.toString(),
                "The file ends in the middle of this line; " + line.bytes().length
                        + " bytes of a last entry were dropped, all before it is there.",
                "Nothing needs to be done.");
    }

    static Problem damaged(String line, String why) {
        return new Problem(line, "It is damaged (" + why + ") and left out.", "The rest of the session is used.");
    }

    /** The number of an input does not follow on the one before. */
    static Problem outOfOrder(String line, long sequence, long before) {
        long missing = sequence - before - 1;
        return new Problem(
                line,
                missing > 0
                        ? missing + (missing == 1 ? " input is" : " inputs are") + " missing before it."
                        : "Its number " + sequence + " is not above the one before (" + before + ").",
                "What is there is used; a replay may differ from what was seen then.");
    }

    static Problem changed(int firstLine, int lastLine) {
        return new Problem(
                "lines " + firstLine + " to " + lastLine,
                "They are not as they were written: something was changed, lost or added there.",
                "What can be read is used; trust it less, or restore the file from a backup.");
    }

    static Problem newerLines(Path file, int lines, Set<String> kinds) {
        return new Problem(
                file.toString(),
                lines + " lines of unknown kind (" + String.join(", ", kinds)
                        + ") were written by a newer program and are kept aside.",
                "Read the session with a newer program to see them.");
    }

    static Problem newerFormat(long format) {
        return new Problem(
                "line 1",
                "This session was written by a newer program (format " + format + "). Some of it may be shown"
                        + " wrongly or not at all.",
                "Read it with a newer program.");
    }
}
