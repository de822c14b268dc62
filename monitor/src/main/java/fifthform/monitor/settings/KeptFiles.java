package fifthform.monitor.settings;

import fifthform.curves.check.Problem;
import fifthform.monitor.texts.FileText;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Small files that the program keeps between batches, one thing each: replaced whole or not at all, and never lost where
 * they cannot be read.
 */
public final class KeptFiles {
    /** What follows a damaged file's own name. */
    public static final String UNREADABLE = ".unreadable";

    private KeptFiles() {}

    /**
     * Writes a new file and moves it into place, so that a crash leaves the old one or the new, never half.
     *
     * @param file its folder is made where there is none
     * @throws IOException it cannot be written; what was kept before stands
     */
    public static void replace(Path file, String text) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(fresh, text);
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /**
     * The files with this ending, in the order of their names; none where there is no folder.
     *
     * @param inTheWay what it means that a file lies where the folder should be
     * @param unlisted what it means that the folder cannot be listed, from the reason
     * @param problems where either is added
     */
    public static List<Path> in(
            Path folder, String ending, String inTheWay, Function<String, String> unlisted, List<Problem> problems) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            problems.add(new Problem(folder.toString(), inTheWay, FileText.MOVE_THE_FILE_TO_ANOTHER_PLACE.say()));
        }
        if (!Files.isDirectory(folder)) return List.of();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            problems.add(new Problem(
                    folder.toString(), unlisted.apply(e.getMessage()), FileText.CHECK_THAT_YOU_MAY_READ_THIS.say()));
            return List.of();
        }
    }

    /** A name beside this file that nothing has yet: with the ending, and a number where that is taken. */
    public static Path free(Path file, String ending) {
        Path other = file.resolveSibling(file.getFileName() + ending);
        for (int number = 2; Files.exists(other); number++) {
            other = file.resolveSibling(file.getFileName() + ending + "-" + number);
        }
        return other;
    }

    /**
     * Moves a file that cannot be read out of the way.
     *
     * @param what what is wrong and what it means
     * @param name what the file is called in the answer: {@code file}
     */
    public static Problem aside(Path file, String what, String name) {
        try {
            Path aside = Files.move(file, free(file, UNREADABLE));
            return new Problem(file.toString(), what, FileText.THE_IS_KEPT_AS.say(name, aside.getFileName()));
        } catch (IOException e) {
            return untouchable(file, what);
        }
    }

    /**
     * Replaces a file of which some cannot be read by what can, and keeps the file as it was beside it.
     *
     * @param what what is wrong and what it means
     * @param text what can be read
     * @param otherwise what else the maker may do than mend the line
     */
    public static Problem mended(Path file, String what, String text, String otherwise) {
        try {
            Path copy = Files.copy(file, free(file, UNREADABLE));
            replace(file, text);
            return new Problem(
                    file.toString(), what, FileText.THE_REST_STAYS_KNOWN_THE_FILE.say(copy.getFileName(), otherwise));
        } catch (IOException e) {
            return untouchable(file, what);
        }
    }

    private static Problem untouchable(Path file, String what) {
        return new Problem(file.toString(), what, FileText.CHECK_THAT_YOU_MAY_READ_AND.say());
    }
}
