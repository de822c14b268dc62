package fifthform.monitor.looks;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Where the pictures are that a maker named. They stay where they are; only their paths are kept. */
public final class Photos {
    private Photos() {}

    /**
     * The picture with this name: beside the session, or from where the program was started, as the name was typed there.
     *
     * @param session the session's file
     * @param named as the maker named it
     * @return empty where no such file can be read now
     */
    public static Optional<Path> find(Path session, String named) {
        try {
            Path path = Path.of(named);
            Path beside = session.toAbsolutePath().resolveSibling(path);
            return Optional.of(Files.exists(beside) ? beside : path.toAbsolutePath())
                    .filter(Files::isRegularFile)
                    .filter(Files::isReadable);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
