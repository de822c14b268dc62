package fifthform.monitor.learned;

import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.settings.KeptFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.CRC32C;

/**
 * Sessions that were gone through before, one a line behind its check sum, each known by name, size and time of its file.
 * The file is derived: it may be deleted or spoilt at any time, and only costs going through the sessions anew.
 */
public final class ReadBefore {
    /** First line. Whoever changes what is counted, or the engine's sense of it, raises the number. */
    private static final String HEAD = "learned index 2; derived from the sessions, may be deleted";

    private final Optional<Path> file;
    private final Map<String, Line> lines = new TreeMap<>();
    private final Map<String, Line> used = new TreeMap<>();

    private record Line(long bytes, long nanos, GoneThrough found) {}

    private ReadBefore(Optional<Path> file) {
        this.file = file;
    }

    /** Nothing is known, and nothing is kept. */
    public static ReadBefore nothing() {
        return new ReadBefore(Optional.empty());
    }

    /** What is kept in this file; where it cannot be read, nothing. */
    public static ReadBefore in(Path file) {
        ReadBefore before = new ReadBefore(Optional.of(file));
        if (!Files.isRegularFile(file)) return before;
        try {
            String[] all = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n");
            if (!all[0].equals(HEAD)) return before;
            for (int i = 1; i < all.length; i++) before.take(all[i]);
        } catch (IOException e) {
            // It is made anew.
        }
        return before;
    }

    private void take(String text) {
        int end = text.indexOf(' ');
        if (end < 0 || !text.substring(0, end).equals(sum(text.substring(end + 1)))) return;
        try {
            JsonObject line = JsonObject.parse(text.substring(end + 1));
            lines.put(line.text("file"), new Line(line.whole("bytes"), line.whole("nanos"), GoneThrough.read(line)));
        } catch (UnreadableJson | RuntimeException e) {
            // Written by another program: gone through anew.
        }
    }

    /** What was found in this session, where its file is as it was then. */
    Optional<GoneThrough> find(Path session) {
        String name = String.valueOf(session.getFileName());
        Line line = lines.get(name);
        if (line == null || !stamp(session).filter(s -> isOf(line, s)).isPresent()) return Optional.empty();
        used.put(name, line);
        return Optional.of(line.found());
    }

    /** Keeps what was found, as of the file that there was before it was read. */
    void keep(Path session, Optional<BasicFileAttributes> stamp, GoneThrough found) {
        stamp.ifPresent(s -> used.put(
                String.valueOf(session.getFileName()),
                new Line(s.size(), nanos(s), Objects.requireNonNull(found, "found"))));
    }

    static Optional<BasicFileAttributes> stamp(Path session) {
        try {
            return Optional.of(Files.readAttributes(session, BasicFileAttributes.class));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static boolean isOf(Line line, BasicFileAttributes stamp) {
        return line.bytes() == stamp.size() && line.nanos() == nanos(stamp);
    }

    private static long nanos(BasicFileAttributes stamp) {
        Instant at = stamp.lastModifiedTime().toInstant();
        return at.getEpochSecond() * 1_000_000_000L + at.getNano();
    }

    /** Writes what was found this time, where anything of it is new; that it cannot be written only costs time. */
    void save() {
        if (file.isEmpty() || used.equals(lines)) return;
        StringBuilder text = new StringBuilder(HEAD).append('\n');
        used.forEach((name, line) -> {
            JsonLine json = new JsonLine()
                    .text("file", name)
                    .whole("bytes", line.bytes())
                    .whole("nanos", line.nanos());
            line.found().into(json);
            String end = json.end();
            text.append(sum(end)).append(' ').append(end).append('\n');
        });
        try {
            KeptFiles.replace(file.get(), text.toString());
        } catch (IOException e) {
            // The next time goes through them again.
        }
    }

    private static String sum(String text) {
        CRC32C sum = new CRC32C();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }
}
