package fifthform.monitor.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

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
        FileChannel channel =
                FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.APPEND);
        return new JournalFile() {
            @Override
            public void append(ByteBuffer bytes) throws IOException {
                channel.write(bytes);
            }

            @Override
            public void force() throws IOException {
                // The length is part of what must survive a power cut, and force(false) is allowed to leave it out.
                channel.force(true);
            }

            @Override
            public long usableBytes() throws IOException {
                return Files.getFileStore(path).getUsableSpace();
            }

            @Override
            public void close() throws IOException {
                channel.close();
            }
        };
    }
}
