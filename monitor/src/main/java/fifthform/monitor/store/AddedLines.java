package fifthform.monitor.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.IntFunction;

/** Files to which lines are only ever added, by whichever program comes. */
public final class AddedLines {
    private AddedLines() {}

    /**
     * Adds a line, in one write and on the disk when it returns; another program that adds to the same file waits.
     *
     * @throws IOException it cannot be written; what was there stands
     */
    public static void append(Path file, String line) throws IOException {
        append(file, lines -> line);
    }

    /**
     * The same for a line that bears its number: the lines are counted only here, while every other program waits, or two
     * would bear one.
     *
     * @param lineAfter makes the line from the number of lines that are there, readable or not
     * @throws IOException it cannot be written; what was there stands
     */
    public static void append(Path file, IntFunction<String> lineAfter) throws IOException {
        try (FileChannel channel = FileChannel.open(
                        file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            long size = channel.size();
            String line = lineAfter.apply(linesIn(channel));
            String text = (lock.isValid() && endsOpen(channel, size) ? "\n" : "") + line + "\n";
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            channel.position(size);
            while (bytes.hasRemaining()) channel.write(bytes);
            channel.force(true);
        }
    }

    /** Through the channel that holds the lock: on some systems no other may read now. */
    private static int linesIn(FileChannel channel) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate((int) Math.min(channel.size(), Integer.MAX_VALUE - 8L));
        while (bytes.hasRemaining() && channel.read(bytes, bytes.position()) > 0) {
            // A read may bring less than it was asked for.
        }
        String text = new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
        return (int) text.lines().filter(line -> !line.isBlank()).count();
    }

    /** A write that was cut off leaves its line open; ours must not run into it. */
    private static boolean endsOpen(FileChannel channel, long size) throws IOException {
        if (size == 0) return false;
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, size - 1);
        return last.get(0) != '\n';
    }
}
