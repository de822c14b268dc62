package fifthform.monitor.notebook;

import fifthform.monitor.proofs.Companions;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.SessionLock;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.NotebookText;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Batches that were put away, a folder each, with all files that belong to them. Emptying it is the only way in which the
 * program ever deletes a batch. One program at a time works on a bin; what another one put in after the question was asked
 * stays.
 */
public final class Bin {
    private static final Object IN_THIS_PROGRAM = new Object();
    private static final String LOCK = ".lock";

    private final Path folder;
    private final Path sessions;

    /**
     * A bin.
     *
     * @param folder where it lies
     * @param sessions where batches come from and go back to
     */
    public Bin(Path folder, Path sessions) {
        this.folder = Objects.requireNonNull(folder, "folder");
        this.sessions = Objects.requireNonNull(sessions, "sessions");
    }

    /**
     * A batch in the bin.
     *
     * @param folder where its files are
     * @param name its session's name
     * @param files how many files there are of it
     */
    public record Binned(Path folder, String name, int files) {}

    /** What is in it, newest first. */
    public List<Binned> list() throws IOException {
        if (!Files.isDirectory(folder)) return List.of();
        List<Binned> all = new ArrayList<>();
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(folder, Files::isDirectory)) {
            for (Path each : folders) {
                List<Path> files = files(each);
                files.stream()
                        .filter(file -> file.toString().endsWith(SessionFiles.ENDING))
                        .findFirst()
                        .ifPresent(session -> all.add(new Binned(each, SessionFiles.name(session), files.size())));
            }
        }
        all.sort(Comparator.comparing(Binned::name).reversed());
        return all;
    }

    /**
     * Puts a batch into the bin: its session, and then whatever belongs to it. If the program ends in the middle, the rest
     * stays where it was, and comes together again when the batch is restored.
     *
     * @param session its file
     * @throws StoreException a running program writes this session
     * @throws IOException it cannot be moved; what was not moved is where it was
     */
    public Binned put(Path session) throws IOException, StoreException {
        synchronized (IN_THIS_PROGRAM) {
            try (FileChannel channel = lock();
                    FileLock held = channel.lock()) {
                Objects.requireNonNull(held, "held");
                List<Path> beside = Companions.of(session);
                Path own = ownFolder(SessionFiles.name(session));
                try (SessionLock lock = SessionLock.take(session)) {
                    Objects.requireNonNull(lock, "lock");
                    if (!Files.exists(session)) throw new IOException(NotebookText.THERE_IS_NONE_ANY_MORE.say(session));
                    Files.createDirectories(own);
                    Files.move(session, own.resolve(session.getFileName()));
                }
                for (Path file : beside) Files.move(file, own.resolve(file.getFileName()));
                return new Binned(own, SessionFiles.name(session), 1 + beside.size());
            }
        }
    }

    /**
     * Brings a batch back. What has taken one of its names meanwhile is left alone; then nothing is moved.
     *
     * @return the session's file
     * @throws IOException it cannot be moved, or a name is taken; what was not moved is in the bin
     */
    public Path restore(Binned batch) throws IOException {
        synchronized (IN_THIS_PROGRAM) {
            try (FileChannel channel = lock();
                    FileLock held = channel.lock()) {
                Objects.requireNonNull(held, "held");
                List<Path> files = new ArrayList<>(files(batch.folder()));
                for (Path file : files) {
                    Path home = sessions.resolve(file.getFileName());
                    if (Files.exists(home)) throw new IOException(NotebookText.IT_IS_THERE_ALREADY.say(home));
                }
                Files.createDirectories(sessions);
                // The session last: until then the batch is still in the bin.
                files.sort(Comparator.comparing(file -> file.toString().endsWith(SessionFiles.ENDING)));
                for (Path file : files) Files.move(file, sessions.resolve(file.getFileName()));
                Files.deleteIfExists(batch.folder());
                return sessions.resolve(batch.name() + SessionFiles.ENDING);
            }
        }
    }

    /**
     * Deletes these batches for good.
     *
     * @param asked those of which the maker was asked, and no others
     * @return how many there were
     * @throws IOException one cannot be deleted; those before it are gone
     */
    public int empty(List<Binned> asked) throws IOException {
        synchronized (IN_THIS_PROGRAM) {
            try (FileChannel channel = lock();
                    FileLock held = channel.lock()) {
                Objects.requireNonNull(held, "held");
                int gone = 0;
                for (Binned batch : asked) {
                    if (!Files.isDirectory(batch.folder())) continue;
                    for (Path file : files(batch.folder())) Files.delete(file);
                    Files.deleteIfExists(batch.folder());
                    gone++;
                }
                return gone;
            }
        }
    }

    private FileChannel lock() throws IOException {
        Files.createDirectories(folder);
        return FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    /** A folder for a batch; a second batch of the same name gets one of its own. */
    private Path ownFolder(String name) {
        Path own = folder.resolve(name);
        for (int number = 2; Files.exists(own); number++) own = folder.resolve(name + " " + number);
        return own;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
