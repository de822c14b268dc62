package fifthform.monitor.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A journal's file. Should somebody delete it or its folder while it is written, it is written anew, whole. */
final class JournalOnDisk implements JournalFile {
    private final Path path;
    private FileChannel channel;

    JournalOnDisk(Path path) throws IOException {
        this.path = path;
        this.channel = open(path);
    }

    @Override
    public void append(ByteBuffer bytes) throws IOException {
        mendDeletion();
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

    /** A deleted file takes bytes without a murmur until it is closed, and then it is gone with all of them. */
    private void mendDeletion() throws IOException {
        if (Files.exists(path)) return;
        Files.createDirectories(path.toAbsolutePath().getParent());
        FileChannel anew = open(path);
        long length = channel.size();
        for (long at = 0; at < length; ) at += channel.transferTo(at, length - at, anew);
        anew.position(length);
        channel.close();
        channel = anew;
    }

    /** For reading as well, so that what is lost can be written again; which appending would not allow. */
    private static FileChannel open(Path path) throws IOException {
        FileChannel channel =
                FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        return channel.position(channel.size());
    }
}
