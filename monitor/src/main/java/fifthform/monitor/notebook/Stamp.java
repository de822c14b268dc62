package fifthform.monitor.notebook;

import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;

/**
 * Size and time of a session's file and of its looks, by which a row is known to be of today.
 *
 * @param bytes size of the session
 * @param nanos when it was last changed, ns since 1970
 * @param looksBytes size of the looks; 0 where there are none
 * @param looksNanos when they were last changed
 */
record Stamp(long bytes, long nanos, long looksBytes, long looksNanos) {
    static Stamp of(BasicFileAttributes session) {
        return new Stamp(session.size(), nanos(session), 0, 0);
    }

    Stamp withLooks(BasicFileAttributes looks) {
        return new Stamp(bytes, nanos, looks.size(), nanos(looks));
    }

    private static long nanos(BasicFileAttributes file) {
        Instant at = file.lastModifiedTime().toInstant();
        return at.getEpochSecond() * 1_000_000_000L + at.getNano();
    }
}
