package fifthform.monitor.backup;

import fifthform.monitor.settings.Folders;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Brings a backup into this computer. Nothing that is here is overwritten: what is the same stays, a file to which lines
 * were added since grows to the longer of the two, and what differs goes into a folder of its own.
 */
public final class Restore {
    private final Folders folders;

    public Restore(Folders folders) {
        this.folders = Objects.requireNonNull(folders, "folders");
    }

    /**
     * What came of it.
     *
     * @param added files that were not here
     * @param same files that were here, in the same state or a later one
     * @param grown files here that were an earlier state of those in the backup
     * @param apart where files went whose like is here with other contents; empty where there were none
     * @param apartFiles how many those are
     * @param twins those of them whose name differs from another one only in small and capital letters
     * @param unlisted what is in the archive and not in its list of contents; it was left out
     */
    public record Done(
            int added,
            int same,
            int grown,
            Optional<Path> apart,
            int apartFiles,
            List<String> twins,
            List<String> unlisted) {
        public Done {
            twins = List.copyOf(twins);
            unlisted = List.copyOf(unlisted);
        }
    }

    /** What is to be done with one file. */
    private enum What {
        ADD,
        LEAVE,
        GROW,
        PUT_APART,
        /** Another file has the same name but for small and capital letters, which some disks take for one. */
        PUT_APART_AS_TWIN
    }

    private record Task(Content content, Path home, What what) {}

    /**
     * Restores everything, or nothing: the whole archive is read and checked first.
     *
     * @throws IOException the archive cannot be used, or there is too little room; nothing was changed. Or a file cannot be
     *     written; those before it are there, and doing it again goes on
     */
    public Done all(Path archive) throws IOException {
        try (Archive from = Archive.open(archive)) {
            List<Task> tasks = new ArrayList<>();
            Names names = new Names();
            long needed = 0;
            for (Content content : from.contents()) {
                Task task = names.hasTwin(home(content))
                        ? new Task(content, home(content), What.PUT_APART_AS_TWIN)
                        : task(content, from.bytes(content));
                tasks.add(task);
                if (task.what() != What.LEAVE) needed += content.bytes();
            }
            roomFor(needed);
            Path apart = freeFolder();
            int twin = 0;
            for (Task task : tasks) {
                // Apart, each by itself: there they would be in each other's way again.
                Path to = task.what() == What.PUT_APART_AS_TWIN ? apart.resolve("twin-" + ++twin) : apart;
                carryOut(task, from, to);
            }
            List<String> twins = tasks.stream()
                    .filter(task -> task.what() == What.PUT_APART_AS_TWIN)
                    .map(task -> printable(task.content().name()))
                    .toList();
            int apartFiles = count(tasks, What.PUT_APART) + twins.size();
            return new Done(
                    count(tasks, What.ADD),
                    count(tasks, What.LEAVE),
                    count(tasks, What.GROW),
                    apartFiles > 0 ? Optional.of(apart) : Optional.empty(),
                    apartFiles,
                    twins,
                    from.unlisted().stream().map(Restore::printable).toList());
        }
    }

    private static int count(List<Task> tasks, What what) {
        return (int) tasks.stream().filter(task -> task.what() == what).count();
    }

    private Task task(Content content, byte[] theirs) throws IOException {
        Path home = home(content);
        if (!Files.exists(home)) return new Task(content, home, What.ADD);
        byte[] ours = Files.readAllBytes(home);
        if (begins(ours, theirs)) return new Task(content, home, What.LEAVE);
        // A session that is being recorded grows by itself and must stay in its writer's hands.
        boolean onlyGrows = content.name().endsWith(".jsonl")
                && !(content.name().endsWith(SessionFiles.ENDING) && SessionFiles.isHeld(home));
        return new Task(content, home, onlyGrows && begins(theirs, ours) ? What.GROW : What.PUT_APART);
    }

    private static boolean begins(byte[] whole, byte[] beginning) {
        if (beginning.length == whole.length) return Arrays.equals(whole, beginning);
        return beginning.length < whole.length
                && beginning.length > 0
                && beginning[beginning.length - 1] == '\n'
                && Arrays.equals(whole, 0, beginning.length, beginning, 0, beginning.length);
    }

    private Path home(Content content) throws IOException {
        if (content.name().equals(Content.SETTINGS)) return folders.settingsFile();
        Optional<Path> home =
                content.shelf().flatMap(shelf -> content.below(shelf.in(folders).toAbsolutePath()));
        return home.orElseThrow(() -> new IOException(FileText.A_PLACE_IS_NONE_OF_OURS.say(printable(content.name()))));
    }

    private static String printable(String name) {
        return name.codePoints()
                .map(c -> Character.isISOControl(c) ? '?' : c)
                .limit(200)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private void roomFor(long bytes) throws IOException {
        Files.createDirectories(folders.data());
        long free = Files.getFileStore(folders.data()).getUsableSpace();
        if (bytes > free)
            throw new IOException(FileText.IT_NEEDS_AND_ARE_FREE.say(bytes / 1_000_000, free / 1_000_000));
    }

    private Path freeFolder() {
        Path folder = folders.data().resolve("restored");
        for (int number = 2; Files.exists(folder); number++)
            folder = folders.data().resolve("restored-" + number);
        return folder;
    }

    private static void carryOut(Task task, Archive from, Path apart) throws IOException {
        switch (task.what()) {
            case LEAVE -> {}
            case ADD -> write(task.home(), from.bytes(task.content()));
            case GROW -> write(task.home(), from.bytes(task.content()), StandardCopyOption.REPLACE_EXISTING);
            case PUT_APART, PUT_APART_AS_TWIN ->
                write(apart.resolve(task.content().name()), from.bytes(task.content()));
        }
    }

    private static void write(Path file, byte[] bytes, StandardCopyOption... how) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        try {
            Files.write(fresh, bytes);
            Files.move(fresh, file, how);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
