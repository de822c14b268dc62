package fifthform.monitor.store;

import fifthform.curves.check.Parsed;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/** The sessions of one folder. */
public final class SessionFiles {
    /** Ending of session files. */
    public static final String ENDING = ".tempering.jsonl";
    /** After this the bowl is another bowl: a session that was cut off is kept but no more gone on with. Own choice. */
    public static final Duration GOES_ON_WITHIN = Duration.ofHours(2);

    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);
    /** The closing line is the last one or nearly so: looks at the bars, appended later, are short and few. */
    private static final int TAIL_BYTES = 1 << 16;

    private final Path folder;

    public SessionFiles(Path folder) {
        this.folder = Objects.requireNonNull(folder, "folder");
    }

    /**
     * A session as a list shows it.
     *
     * @param file its file
     * @param header its header, or why it has none that can be used
     * @param ending how it ended
     */
    public record Listed(Path file, Parsed<SessionHeader> header, Ending ending) {}

    /** How a session ended. */
    public enum Ending {
        CLOSED,
        /** Without its closing line: cut off, or still being written. */
        OPEN
    }

    /** The session's name: the file's without the ending. */
    public static String name(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /**
     * Where something is kept that belongs to a session: beside it, under its name.
     *
     * @param ending of that kind of file
     */
    public static Path beside(Path sessionFile, String ending) {
        return sessionFile.resolveSibling(name(sessionFile) + ending);
    }

    /**
     * Makes an empty file for a new session, with a name that no other has: {@code <date>-<time>-<chocolate>}, with
     * {@code -2} and so on where that is taken.
     *
     * @param start when the session begins
     * @param zone the kitchen's offset, for the name is for people
     * @param chocolate the recipe's id
     * @throws StoreException the folder cannot be made or written
     */
    public Path reserve(Instant start, ZoneOffset zone, String chocolate) throws StoreException {
        String name = NAME.format(start.atOffset(zone)) + "-" + chocolate;
        Path file = folder.resolve(name + ENDING);
        try {
            Files.createDirectories(folder);
            for (int number = 2; ; number++) {
                try {
                    return Files.createFile(file);
                } catch (FileAlreadyExistsException e) {
                    file = folder.resolve(name + "-" + number + ENDING);
                }
            }
        } catch (IOException e) {
            throw StoreException.cannotOpen(file, e);
        }
    }

    /**
     * All session files, newest first.
     *
     * @throws StoreException the folder cannot be listed
     */
    public List<Path> all() throws StoreException {
        if (!Files.isDirectory(folder)) return List.of();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted(Comparator.comparing(Path::getFileName).reversed())
                    .toList();
        } catch (IOException e) {
            throw StoreException.cannotOpen(folder, e);
        }
    }

    /**
     * All sessions with their headers, newest first.
     *
     * @throws StoreException the folder cannot be listed
     */
    public List<Listed> list() throws StoreException {
        return all().stream()
                .map(file -> new Listed(file, JournalReader.readHeader(file), ending(file)))
                .toList();
    }

    /**
     * Sessions that were cut off and may be gone on with, newest first: without closing line, last written to within
     * {@link #GOES_ON_WITHIN}, and held by no other program. Simulated ones are among them; their bowl is gone, so they
     * can only be told of.
     *
     * @param now time of day
     * @throws StoreException the folder cannot be listed
     */
    public List<Session> unfinished(Instant now) throws StoreException {
        List<Session> unfinished = new ArrayList<>();
        for (Path file : all()) {
            if (!isRecent(file, now) || ending(file) == Ending.CLOSED || isHeld(file)) continue;
            // One whose header was never written holds nothing to go on with; lists still show it.
            JournalReader.read(file).fold(unfinished::add, problems -> false);
        }
        return List.copyOf(unfinished);
    }

    private static boolean isRecent(Path file, Instant now) {
        try {
            Instant written = Files.getLastModifiedTime(file).toInstant();
            return Duration.between(written, now).compareTo(GOES_ON_WITHIN) <= 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether a running program writes this session. */
    public static boolean isHeld(Path file) {
        try {
            SessionLock.take(file).close();
            return false;
        } catch (StoreException | IOException e) {
            return true;
        }
    }

    private static Ending ending(Path file) {
        String closing = "{\"" + LineKind.KEY + "\":\"" + LineKind.CLOSING.letter + "\"";
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "r")) {
            int length = (int) Math.min(TAIL_BYTES, bytes.length());
            byte[] tail = new byte[length];
            bytes.seek(bytes.length() - length);
            bytes.readFully(tail);
            boolean closed = new String(tail, StandardCharsets.UTF_8).lines().anyMatch(l -> l.startsWith(closing));
            return closed ? Ending.CLOSED : Ending.OPEN;
        } catch (IOException e) {
            return Ending.OPEN;
        }
    }
}
