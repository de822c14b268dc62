package fifthform.monitor.settings;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the program keeps its files on this platform.
 *
 * @param data recipes, probes, bowls, notebook index
 * @param sessions recorded batches; within {@code data} unless the maker chose another folder
 * @param config settings
 * @param state logs
 */
public record Folders(Path data, Path sessions, Path config, Path state) {
    public Folders {
        Objects.requireNonNull(data, "data");
        Objects.requireNonNull(sessions, "sessions");
        Objects.requireNonNull(config, "config");
        Objects.requireNonNull(state, "state");
    }

    /**
     * The folders of a platform.
     *
     * @param osName as in the system property {@code os.name}
     * @param environment the environment's variables
     * @param home the maker's home folder
     */
    public static Folders of(String osName, Map<String, String> environment, Path home) {
        String os = osName.toLowerCase(Locale.ROOT);
        if (os.startsWith("windows")) {
            return oneFolder(absolute(environment, "APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("FifthForm"));
        }
        if (os.startsWith("mac")) {
            return oneFolder(
                    home.resolve("Library").resolve("Application Support").resolve("Fifth Form"));
        }
        // XDG Base Directory Specification 0.8, with its defaults.
        Path data = absolute(environment, "XDG_DATA_HOME").orElse(home.resolve(".local/share"));
        Path config = absolute(environment, "XDG_CONFIG_HOME").orElse(home.resolve(".config"));
        Path state = absolute(environment, "XDG_STATE_HOME").orElse(home.resolve(".local/state"));
        return inData(data.resolve("fifthform"), config.resolve("fifthform"), state.resolve("fifthform"));
    }

    /** The same with data, and so sessions, elsewhere ({@code --data}). */
    public Folders withData(Path otherData) {
        return inData(otherData, config, state);
    }

    /** The same with new sessions elsewhere ({@code --record}). */
    public Folders withSessions(Path otherSessions) {
        return new Folders(data, otherSessions, config, state);
    }

    /** The maker's own recipes. */
    public Path recipes() {
        return data.resolve("recipes");
    }

    /** What is known of probes: corrections, adapters. */
    public Path probes() {
        return data.resolve("probes");
    }

    /** What is known of bowls: what they are, how far they coast. */
    public Path bowls() {
        return data.resolve("bowls");
    }

    /** What is known of cups: how they cool, own good curves. */
    public Path cups() {
        return data.resolve("cups");
    }

    /** Batches of others, that somebody sent. They never count as one's own. */
    public Path sent() {
        return data.resolve("sent");
    }

    /** Batches of others that were put away; from here they come back among those of others. */
    public Path sentBin() {
        return data.resolve("sent-bin");
    }

    /** What the notebook keeps to be quick; may be deleted at any time. */
    public Path notebookIndex() {
        return data.resolve("notebook.index");
    }

    /** What was found in looked-at sessions, to be quick; may be deleted at any time. */
    public Path learnedIndex() {
        return data.resolve("learned.index");
    }

    /** Batches that were put away; restorable until the bin is emptied. */
    public Path bin() {
        return data.resolve("bin");
    }

    /** The same for batches of others. */
    public Path sentIndex() {
        return data.resolve("sent.index");
    }

    public Path settingsFile() {
        return config.resolve("settings.json");
    }

    public Path log() {
        return state.resolve("log");
    }

    private static Folders oneFolder(Path folder) {
        return inData(folder, folder, folder);
    }

    private static Folders inData(Path data, Path config, Path state) {
        return new Folders(data, data.resolve("sessions"), config, state);
    }

    /** Relative paths in these variables are to be ignored, says the specification; so are empty ones. */
    private static Optional<Path> absolute(Map<String, String> environment, String variable) {
        try {
            return Optional.ofNullable(environment.get(variable))
                    .filter(text -> !text.isBlank())
                    .map(Path::of)
                    .filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
