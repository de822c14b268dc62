package fifthform.monitor.backup;

import fifthform.curves.setup.Origin;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.store.JournalReader;
import fifthform.monitor.store.SessionFiles;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes everything that is kept into one archive: a ZIP file with a list of contents and their sums as its last entry.
 * Files to which lines are only ever added are taken up to their last whole line, so that a backup may be made while a
 * batch is recorded.
 */
public final class Backup {
    /** The list of contents. */
    static final String CONTENTS = "contents.jsonl";

    static final int FORMAT = 1;

    private final Folders folders;

    public Backup(Folders folders) {
        this.folders = Objects.requireNonNull(folders, "folders");
    }

    /** What is left out unless it is asked for. */
    public enum Also {
        /** Simulated sessions, and what lies beside them. */
        PRACTICE,
        /** Batches that were put away. */
        BIN
    }

    /**
     * What a backup holds.
     *
     * @param files how many files
     * @param sessions how many of them are sessions
     * @param practiceLeftOut simulated sessions that are not in it
     */
    public record Made(int files, int sessions, int practiceLeftOut) {}

    /**
     * Writes an archive, reads it again, and only then gives it its name.
     *
     * @param archive nothing is there yet
     * @param also what is to be in it besides
     * @param now time of day
     * @throws IOException it cannot be written, or does not read as it was written; nothing stands under its name then
     */
    public Made write(Path archive, Set<Also> also, Instant now) throws IOException {
        Path target = archive.toAbsolutePath();
        Path fresh = target.resolveSibling(target.getFileName() + ".new");
        try {
            Set<String> practice = also.contains(Also.PRACTICE) ? Set.of() : practice();
            List<Content> contents = new ArrayList<>();
            try (OutputStream file = Files.newOutputStream(fresh);
                    ZipOutputStream zip = new ZipOutputStream(file, StandardCharsets.UTF_8)) {
                for (Shelf shelf : Shelf.values())
                    if (!shelf.isBin() || also.contains(Also.BIN)) add(shelf, practice, zip, contents);
                if (Files.isRegularFile(folders.settingsFile()))
                    contents.add(add(Content.SETTINGS, Files.readAllBytes(folders.settingsFile()), zip));
                zip.putNextEntry(new ZipEntry(CONTENTS));
                zip.write(list(contents, now).getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
            try (Archive written = Archive.open(fresh)) {
                for (Content content : written.contents()) written.bytes(content);
            }
            // Not by ATOMIC_MOVE, which on some systems takes the place of a file that came meanwhile.
            Files.move(fresh, target);
            int sessions = (int) contents.stream()
                    .filter(c -> c.shelf().filter(Shelf.SESSIONS::equals).isPresent())
                    .filter(c -> c.name().endsWith(SessionFiles.ENDING))
                    .count();
            return new Made(contents.size(), sessions, practice.size());
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private static String list(List<Content> contents, Instant now) {
        StringBuilder list = new StringBuilder(new JsonLine()
                .text("backup", "fifthform")
                .whole("format", FORMAT)
                .text("made", now.toString())
                .whole("files", contents.size())
                .end());
        for (Content content : contents) list.append('\n').append(content.line());
        return list.append('\n').toString();
    }

    private void add(Shelf shelf, Set<String> practice, ZipOutputStream zip, List<Content> contents)
            throws IOException {
        Path folder = shelf.in(folders);
        if (!Files.isDirectory(folder)) return;
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile)
                    .filter(Backup::isKept)
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            if (shelf == Shelf.SESSIONS && belongsTo(file, practice)) continue;
            String name =
                    shelf.word() + "/" + folder.relativize(file).toString().replace('\\', '/');
            contents.add(add(name, wholeLines(file), zip));
        }
    }

    /** Locks and half-written files are of this computer and this moment. */
    private static boolean isKept(Path file) {
        String name = file.getFileName().toString();
        return !name.endsWith(".lock") && !name.endsWith(".new");
    }

    private static Content add(String name, byte[] bytes, ZipOutputStream zip) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
        return new Content(name, bytes.length, Sums.of(bytes));
    }

    /** The line that is being written now is not there yet. */
    private static byte[] wholeLines(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        if (!file.toString().endsWith(".jsonl")) return bytes;
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') end--;
        // A file without any whole line is damaged, and kept as it is.
        return end == 0 || end == bytes.length ? bytes : Arrays.copyOf(bytes, end);
    }

    /** Names of simulated sessions. */
    private Set<String> practice() throws IOException {
        Set<String> names = new HashSet<>();
        if (!Files.isDirectory(folders.sessions())) return names;
        try (Stream<Path> all = Files.list(folders.sessions())) {
            for (Path file :
                    all.filter(f -> f.toString().endsWith(SessionFiles.ENDING)).toList())
                if (JournalReader.readHeader(file).fold(h -> h.setup().origin() == Origin.SIMULATED, problems -> false))
                    names.add(SessionFiles.name(file));
        }
        return names;
    }

    private static boolean belongsTo(Path file, Set<String> practice) {
        String name = file.getFileName().toString();
        if (name.endsWith(ProofFile.ENDING)) return isSimulated(file);
        return practice.stream().anyMatch(session -> name.startsWith(session + "."));
    }

    private static boolean isSimulated(Path proof) {
        try (Stream<String> lines = Files.lines(proof, StandardCharsets.UTF_8)) {
            String head = lines.findFirst().orElse("");
            return JsonObject.parse(head)
                    .optionalText("origin")
                    .filter("simulated"::equals)
                    .isPresent();
        } catch (IOException | UnreadableJson | UncheckedIOException e) {
            return false;
        }
    }
}
