package fifthform.monitor.store;

import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps two programs from writing one session. The lock lies on a file beside the session and not on the session itself:
 * on some platforms that would keep readers out, and on others a reader closing the file would end the lock. It goes with
 * the process, however that ends.
 */
public final class SessionLock implements AutoCloseable {
    private final Path file;
    private final FileChannel channel;

    private SessionLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes the lock of a session.
     *
     * @throws StoreException another program holds it, or the lock's file cannot be made
     */
    public static SessionLock take(Path session) throws StoreException {
        Path file = session.resolveSibling(session.getFileName() + ".lock");
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                FileLock lock = channel.tryLock();
                if (lock != null) return new SessionLock(file, channel);
            } catch (OverlappingFileLockException e) {
                // Held by this very program: the same answer.
            }
            channel.close();
        } catch (IOException e) {
            throw StoreException.cannotOpen(session, e);
        }
        throw new StoreException(
                session.toString(), FileText.ANOTHER_PROGRAM_WRITES_THIS.say(), FileText.GO_ON_THERE_OR_END_IT.say());
    }

    /** For when writing could not begin: the reason for that is told, not what giving up met. */
    void giveUp() {
        try {
            close();
        } catch (IOException e) {
            // The lock goes with the process at the latest.
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(file);
    }
}
