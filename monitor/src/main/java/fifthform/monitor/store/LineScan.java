package fifthform.monitor.store;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Goes through a journal line by line, byte for byte. */
final class LineScan implements AutoCloseable {
    /** No line of ours comes near this; it keeps a film or a disk image from filling the memory. */
    private static final int LONGEST_BYTES = 4_000_000;

    private final InputStream bytes;
    private int number;

    private LineScan(InputStream bytes) {
        this.bytes = bytes;
    }

    static LineScan of(Path file) throws IOException {
        return new LineScan(new BufferedInputStream(Files.newInputStream(file), 1 << 16));
    }

    /** The next line; what is beyond the longest line there can be is left out. */
    Optional<RawLine> next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream(128);
        int next = bytes.read();
        while (next >= 0) {
            if (line.size() < LONGEST_BYTES || next == '\n') line.write(next);
            if (next == '\n') break;
            next = bytes.read();
        }
        return line.size() == 0 ? Optional.empty() : Optional.of(new RawLine(++number, line.toByteArray()));
    }

    @Override
    public void close() throws IOException {
        bytes.close();
    }
}
