package fifthform.monitor.app;

import fifthform.monitor.bars.MarkFile;
import fifthform.monitor.bars.SetLog;
import fifthform.monitor.bars.StoreLog;
import fifthform.monitor.looks.LookFile;
import fifthform.monitor.proofs.ProofFile;
import fifthform.monitor.replay.NoteFile;
import fifthform.monitor.settings.Folders;
import fifthform.monitor.store.SessionFiles;
import fifthform.monitor.store.StoreException;
import fifthform.monitor.texts.CommandText;
import fifthform.monitor.texts.DidYouMean;
import fifthform.monitor.texts.FileText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Finds a session by path, by name in the sessions' folder, or the newest there. */
final class SessionNames {
    /** Names the newest session, so that nobody has to type a date. */
    static final String LAST = "last";

    private static final Map<String, CommandText> COMPANIONS = Map.of(
            ProofFile.ENDING, CommandText.A_SAMPLE_THAT_WAS_PROVED,
            LookFile.ENDING, CommandText.LOOKS_AT_THE_BARS,
            NoteFile.ENDING, CommandText.NOTES_BESIDE,
            SetLog.ENDING, CommandText.HOW_BARS_SET,
            StoreLog.ENDING, CommandText.HOW_BARS_WERE_KEPT,
            MarkFile.ENDING, CommandText.ANSWERS_ABOUT_BARS);

    private SessionNames() {}

    /** One's own, or one that somebody sent. */
    static Path find(String name, Folders folders) throws Refusal {
        Path sent = named(name, folders.sent());
        return Files.exists(sent) && !Files.exists(named(name, folders.sessions()))
                ? sent
                : find(name, folders.sessions());
    }

    /** In this folder only. */
    static Path find(String name, Path sessions) throws Refusal {
        refuseCompanion(name);
        Path direct = Path.of(name);
        if (Files.exists(direct)) return direct;
        if (name.equals(LAST)) return last(sessions);
        Path inFolder = named(name, sessions);
        if (Files.exists(inFolder)) return inFolder;
        throw new Refusal(
                Exit.FILE, CommandText.THERE_IS_NO_SESSION_NOTHING.say(name, sessions, meant(name, sessions)));
    }

    /** A part of a name stands for the newest that has it: nobody types a time of day to the second. */
    private static String meant(String name, Path sessions) {
        try {
            List<String> known = new SessionFiles(sessions)
                    .all().stream().map(SessionFiles::name).toList();
            return known.stream()
                    .filter(each -> each.contains(name))
                    .findFirst()
                    .map(FileText.DID_YOU_MEAN::say)
                    .orElseGet(() -> DidYouMean.oneOf(known, name));
        } catch (StoreException e) {
            return ""; // The refusal itself is what matters here.
        }
    }

    private static Path named(String name, Path folder) {
        return folder.resolve(name.endsWith(SessionFiles.ENDING) ? name : name + SessionFiles.ENDING);
    }

    /** What lies beside a session is easily taken for it, since the names begin alike. */
    private static void refuseCompanion(String name) throws Refusal {
        for (Map.Entry<String, CommandText> companion : COMPANIONS.entrySet()) {
            if (!name.endsWith(companion.getKey())) continue;
            throw new Refusal(
                    Exit.FILE,
                    CommandText.HOLDS_AND_NO_SESSION_NOTHING.say(
                            name, companion.getValue().say(), SessionFiles.ENDING));
        }
    }

    private static Path last(Path sessions) throws Refusal {
        try {
            return new SessionFiles(sessions)
                    .all().stream()
                            .findFirst()
                            .orElseThrow(
                                    () -> new Refusal(Exit.FILE, CommandText.THERE_IS_NO_SESSION_IN_YET.say(sessions)));
        } catch (StoreException e) {
            throw new Refusal(Exit.FILE, e.getMessage());
        }
    }
}
