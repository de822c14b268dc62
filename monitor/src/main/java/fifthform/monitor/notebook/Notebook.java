package fifthform.monitor.notebook;

import fifthform.monitor.looks.LookFile;
import fifthform.monitor.store.SessionFiles;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * The batches of a folder as rows. {@link #open} answers at once with what the index knows; {@link #readOn} reads the
 * others, newest first, and may be called on another thread, one at a time; the folder may be listed meanwhile.
 */
public final class Notebook {
    /** The order of a fresh notebook. */
    static final Comparator<BatchRow> NEWEST_FIRST =
            Comparator.comparing(BatchRow::start).thenComparing(BatchRow::name).reversed();

    /** So many rows are made between two savings of the index, so that a first reading that is broken off was not in vain. */
    private static final int SAVED_EVERY = 250;

    private final Path sessions;
    private final IndexFile index;
    private final Map<String, RowText.Kept> known = new ConcurrentHashMap<>();
    private volatile Map<String, Stamp> there = Map.of();
    private boolean loaded;

    /**
     * A notebook.
     *
     * @param sessions where sessions lie
     * @param index where rows are kept between two starts
     */
    public Notebook(Path sessions, Path index) {
        this.sessions = Objects.requireNonNull(sessions, "sessions");
        this.index = new IndexFile(index);
    }

    /**
     * All rows, newest first: those known, and for the others what their names tell.
     *
     * @throws IOException the folder cannot be listed
     */
    public List<BatchRow> open() throws IOException {
        // The index is read while the folder is walked: a fresh program has rows in half the time.
        CompletableFuture<Map<String, RowText.Kept>> before = loaded
                ? CompletableFuture.completedFuture(Map.of())
                : CompletableFuture.supplyAsync(() -> index.load(sessions));
        there = stamps();
        known.putAll(before.join());
        loaded = true;
        known.keySet().retainAll(there.keySet());
        List<BatchRow> rows = new ArrayList<>();
        there.keySet()
                .forEach(name ->
                        rows.add(isKnown(name) ? known.get(name).row() : BatchReader.unread(sessions.resolve(name))));
        rows.sort(NEWEST_FIRST);
        return rows;
    }

    /** How many rows are still to be made. */
    public int unread() {
        return (int) there.keySet().stream().filter(name -> !isKnown(name)).count();
    }

    /**
     * Makes the rows that are missing, newest first, and keeps them.
     *
     * @param each told each row as it is made
     * @param stopped asked between two; what was made until then is kept
     * @return why the index could not be kept; empty where it was, or where nothing was to do
     */
    public Optional<String> readOn(Consumer<BatchRow> each, BooleanSupplier stopped) {
        // Taken once: the folder may be listed anew meanwhile.
        Map<String, Stamp> listed = there;
        List<String> missing = listed.keySet().stream()
                .filter(name -> !isKnown(name))
                .sorted(Comparator.reverseOrder())
                .toList();
        int made = 0;
        for (String name : missing) {
            if (stopped.getAsBoolean()) break;
            BatchRow row = BatchReader.read(sessions.resolve(name));
            known.put(name, new RowText.Kept(listed.get(name), row));
            each.accept(row);
            if (++made % SAVED_EVERY == 0) save();
        }
        return made == 0 ? Optional.empty() : save();
    }

    /** A curve of this batch fine enough to be looked at. */
    public static SmallCurve curve(BatchRow row) {
        return BatchReader.curve(row.file());
    }

    private Optional<String> save() {
        try {
            // What a running program still writes is read anew the next time.
            index.save(known.values().stream()
                    .filter(kept -> kept.row().condition() != Condition.GOING_ON)
                    .toList());
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    private boolean isKnown(String name) {
        RowText.Kept kept = known.get(name);
        return kept != null && kept.stamp().equals(there.get(name));
    }

    /** Name of each session's file, with size and time of it and of its looks; one walk, since each question costs. */
    private Map<String, Stamp> stamps() throws IOException {
        if (!Files.isDirectory(sessions)) return Map.of();
        Map<String, BasicFileAttributes> files = new HashMap<>();
        Files.walkFileTree(sessions, Set.of(), 1, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (attributes.isRegularFile() || attributes.isSymbolicLink())
                    files.put(String.valueOf(file.getFileName()), attributes);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
                // One that went away meanwhile is no row; the folder itself is another matter.
                if (file.equals(sessions)) throw e;
                return FileVisitResult.CONTINUE;
            }
        });
        Map<String, Stamp> stamps = new HashMap<>();
        files.forEach((name, attributes) -> {
            if (!name.endsWith(SessionFiles.ENDING)) return;
            Stamp stamp = Stamp.of(attributes);
            String session = name.substring(0, name.length() - SessionFiles.ENDING.length());
            BasicFileAttributes looks = files.get(session + LookFile.ENDING);
            stamps.put(name, looks == null ? stamp : stamp.withLooks(looks));
        });
        return stamps;
    }
}
