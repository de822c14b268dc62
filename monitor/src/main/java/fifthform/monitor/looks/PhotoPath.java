package fifthform.monitor.looks;

import fifthform.monitor.texts.LooksText;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Where a picture of bars lies. A path is looked for from where the maker stands, then from the session's folder; what lies
 * in that folder is kept relative to it, so that the folder may move with its pictures.
 *
 * @param kept the path as a look keeps it
 * @param isThere whether there is such a file now
 */
public record PhotoPath(String kept, boolean isThere) {
    public PhotoPath {
        Objects.requireNonNull(kept, "kept");
    }

    /** The path that was said, for bars of this session. */
    public static PhotoPath of(String said, Path sessionFile) {
        try {
            Path folder = folder(sessionFile);
            for (Path path : List.of(
                    Path.of(said).toAbsolutePath().normalize(),
                    folder.resolve(said).normalize())) {
                if (!Files.isRegularFile(path)) continue;
                return new PhotoPath(
                        path.startsWith(folder) ? folder.relativize(path).toString() : path.toString(), true);
            }
        } catch (InvalidPathException e) {
            return new PhotoPath(said, false);
        }
        return new PhotoPath(said, false);
    }

    /** Paths that were typed into one field, with semicolons between. */
    public static List<PhotoPath> typed(String field, Path sessionFile) {
        return Stream.of(field.split(";"))
                .map(String::strip)
                .filter(path -> !path.isEmpty())
                .map(path -> of(path, sessionFile))
                .toList();
    }

    /** What is to be said where there is no such file. */
    public String missing() {
        return LooksText.THERE_IS_NO_FILE_AT_THE.say(LookWords.plain(kept));
    }

    private static Path folder(Path sessionFile) {
        return sessionFile.toAbsolutePath().normalize().getParent();
    }
}
