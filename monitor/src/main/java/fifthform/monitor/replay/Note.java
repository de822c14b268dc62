package fifthform.monitor.replay;

import java.time.Instant;
import java.util.Objects;

/**
 * Something that was written to a batch afterwards.
 *
 * @param number of its line in the file, by which later lines speak of it
 * @param nanos the moment of the batch it is about, ns since the session's start
 * @param text the words; empty for a bare mark
 * @param writtenAt when it was written
 */
public record Note(int number, long nanos, String text, Instant writtenAt) {
    public Note {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(writtenAt, "writtenAt");
    }

    public boolean isMark() {
        return text.isBlank();
    }
}
