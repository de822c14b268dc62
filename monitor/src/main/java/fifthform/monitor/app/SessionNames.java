package fifthform.monitor.app;

import fifthform.monitor.store.SessionFiles;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds a session by path, or by name in the sessions' folder. */
final class SessionNames {
    private SessionNames() {}

    static Path find(String name, Path sessions) throws Refusal {
        Path direct = Path.of(name);
        if (Files.exists(direct)) return direct;
        Path inFolder = sessions.resolve(name.endsWith(SessionFiles.ENDING) ? name : name + SessionFiles.ENDING);
        if (Files.exists(inFolder)) return inFolder;
        throw new Refusal(
                Exit.FILE,
                "There is no session " + name + ". Nothing can be replayed. Look in " + sessions
                        + " or give the file's whole path.");
    }
}
