package fifthform.monitor.app;

import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.StoreException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds a session by path, by name in the sessions' folder, or the newest there. */
final class SessionNames {
    /** Names the newest session, so that nobody has to type a date. */
    static final String LAST = "last";

    private SessionNames() {}

    static Path find(String name, Path sessions) throws Refusal {
        Path direct = Path.of(name);
        if (Files.exists(direct)) return direct;
        if (name.equals(LAST)) return last(sessions);
        Path inFolder = sessions.resolve(name.endsWith(SessionFiles.ENDING) ? name : name + SessionFiles.ENDING);
        if (Files.exists(inFolder)) return inFolder;
        throw new Refusal(
                Exit.FILE,
                "There is no session " + name + ". Nothing was done. Look in " + sessions
                        + " or give the file's whole path.");
    }

    private static Path last(Path sessions) throws Refusal {
        try {
            return new SessionFiles(sessions)
                    .all().stream()
                            .findFirst()
                            .orElseThrow(() -> new Refusal(
                                    Exit.FILE,
                                    "There is no session in " + sessions + " yet. Nothing was done."
                                            + " Record one: monitor/run watch --probe practice"));
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, e.getMessage());
        }
    }
}
