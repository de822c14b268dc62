package fifthform.monitor.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;

/** Where the journal's bytes go: a file, or in tests one that fails on demand. */
interface JournalFile extends AutoCloseable {
    /** Appends some or all of what remains in {@code bytes} and moves its position by as much. */
    void append(ByteBuffer bytes) throws IOException;

    /** Has the disk take everything. */
    void force() throws IOException;

    /** Room left, bytes. */
    long usableBytes() throws IOException;

    @Override
    void close() throws IOException;

    /** The file at {@code path}, made where it is missing. */
    static JournalFile open(Path path) throws IOException {
        return new JournalOnDisk(path);
    }
}
