package fifthform.monitor.store;

import fifthform.curves.check.Problem;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** Small files, most of them beside a session, to which lines are only ever added, by whichever program comes. */
public final class AddedLines {
    private AddedLines() {}

    /** Takes what one line says. */
    @FunctionalInterface
    public interface Taking {
        /** @throws UnreadableJson the line cannot be used: it is passed over and said */
        void take(JsonObject line) throws UnreadableJson;
    }

    /**
     * How it is said that something cannot be read, in words of what the file holds.
     *
     * @param file of the whole file, from the reason
     * @param line of one line that is passed over, from the reason
     * @param todo what becomes of such a line, and what to do
     */
    public record Unread(UnaryOperator<String> file, UnaryOperator<String> line, Supplier<String> todo) {}

    /**
     * Reads all lines in their order; never fails. No file is no line.
     *
     * @return what could not be read, each with its line as an editor numbers it; it stays in the file
     */
    public static List<Problem> read(Path file, Unread unread, Taking taking) {
        if (!Files.exists(file)) return List.of();
        List<String> lines;
        try {
            // A byte that is no UTF-8 costs its line and not the file.
            lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            return List.of(new Problem(
                    file.toString(), unread.file().apply(why(file, e)), FileText.CHECK_THAT_THIS_IS_A_FILE.say()));
        }
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) continue;
            try {
                taking.take(JsonObject.parse(lines.get(i)));
            } catch (UnreadableJson | RuntimeException e) {
                // What a line is made into guards itself: a time that is none, a number out of its range.
                problems.add(new Problem(
                        FileText.LINE.say(file, i + 1),
                        unread.line().apply(e.getMessage()),
                        unread.todo().get()));
            }
        }
        return problems;
    }

    /** @throws UnreadableJson the line is not of this session */
    public static void isOf(String session, JsonObject line) throws UnreadableJson {
        if (!line.text("session").equals(session))
            throw new UnreadableJson(FileText.IT_IS_OF_ANOTHER_SESSION.say(line.text("session")));
    }

    /** A kind of line that nobody here knows. */
    public static UnreadableJson unknown(String kind) {
        return new UnreadableJson(FileText.ITS_KIND_IS_OF_A_NEWER.say(kind));
    }

    /** Why a file could not be read or written; systems do not say plainly that a folder has its name, and
     * of a missing folder or a missing right they say the path alone. */
    public static String why(Path file, IOException e) {
        if (Files.isDirectory(file)) return FileText.IT_IS_A_FOLDER.say();
        if (e instanceof AccessDeniedException) return FileText.YOU_HAVE_NO_RIGHT_TO_IT.say();
        Path folder = file.toAbsolutePath().getParent();
        return e instanceof NoSuchFileException && folder != null && Files.notExists(folder)
                ? FileText.THERE_IS_NO_FOLDER.say(folder)
                : String.valueOf(e.getMessage());
    }

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
